using System.Globalization;

namespace Endurance.Quantities;

/// <summary>Electric potential difference; either sign.</summary>
/// <remarks>Stored in volts; <c>default</c> is zero. Factories throw <see cref="ArgumentOutOfRangeException"/> on NaN and infinities.</remarks>
public readonly record struct Voltage : IComparable<Voltage>
{
    private Voltage(double value) => Volts = value;

    /// <summary>Zero volts.</summary>
    public static Voltage Zero => default;

    /// <summary>Value in volts.</summary>
    public double Volts { get; }

    public static Voltage FromVolts(double volts) => new(Finite.Checked(volts));

    public static Voltage operator +(Voltage a, Voltage b) => new(a.Volts + b.Volts);

    public static Voltage operator -(Voltage a, Voltage b) => new(a.Volts - b.Volts);

    public static Voltage operator -(Voltage a) => new(-a.Volts);

    public static Voltage operator *(Voltage a, double factor) => new(a.Volts * factor);

    public static Voltage operator *(double factor, Voltage a) => new(a.Volts * factor);

    public static Voltage operator /(Voltage a, double divisor) => new(a.Volts / divisor);

    public static double operator /(Voltage a, Voltage b) => a.Volts / b.Volts;

    public static bool operator <(Voltage a, Voltage b) => a.Volts < b.Volts;

    public static bool operator >(Voltage a, Voltage b) => a.Volts > b.Volts;

    public static bool operator <=(Voltage a, Voltage b) => a.Volts <= b.Volts;

    public static bool operator >=(Voltage a, Voltage b) => a.Volts >= b.Volts;

    public static Current operator /(Voltage v, Resistance r) => Current.FromAmperes(v.Volts / r.Ohms);

    public static Power operator *(Voltage v, Current i) => Power.FromWatts(v.Volts * i.Amperes);

    public int CompareTo(Voltage other) => Volts.CompareTo(other.Volts);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Volts:G6} V");
}
