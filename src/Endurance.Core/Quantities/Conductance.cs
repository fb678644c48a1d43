using System.Globalization;

namespace Endurance.Quantities;

/// <summary>Electric conductance.</summary>
/// <remarks>Stored in siemens; <c>default</c> is zero. Factories throw <see cref="ArgumentOutOfRangeException"/> on NaN and infinities.</remarks>
public readonly record struct Conductance : IComparable<Conductance>
{
    private Conductance(double value) => Siemens = value;

    /// <summary>Zero siemens.</summary>
    public static Conductance Zero => default;

    /// <summary>Value in siemens.</summary>
    public double Siemens { get; }

    public static Conductance FromSiemens(double siemens) => new(Finite.Checked(siemens));

    public static Conductance operator +(Conductance a, Conductance b) => new(a.Siemens + b.Siemens);

    public static Conductance operator -(Conductance a, Conductance b) => new(a.Siemens - b.Siemens);

    public static Conductance operator -(Conductance a) => new(-a.Siemens);

    public static Conductance operator *(Conductance a, double factor) => new(a.Siemens * factor);

    public static Conductance operator *(double factor, Conductance a) => new(a.Siemens * factor);

    public static Conductance operator /(Conductance a, double divisor) => new(a.Siemens / divisor);

    public static double operator /(Conductance a, Conductance b) => a.Siemens / b.Siemens;

    public static bool operator <(Conductance a, Conductance b) => a.Siemens < b.Siemens;

    public static bool operator >(Conductance a, Conductance b) => a.Siemens > b.Siemens;

    public static bool operator <=(Conductance a, Conductance b) => a.Siemens <= b.Siemens;

    public static bool operator >=(Conductance a, Conductance b) => a.Siemens >= b.Siemens;

    public int CompareTo(Conductance other) => Siemens.CompareTo(other.Siemens);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Siemens:G6} S");
}
