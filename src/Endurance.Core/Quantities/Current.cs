using System.Globalization;

namespace Endurance.Quantities;

/// <summary>Electric current; either sign.</summary>
/// <remarks>Stored in amperes; <c>default</c> is zero. Factories throw <see cref="ArgumentOutOfRangeException"/> on NaN and infinities.</remarks>
public readonly record struct Current : IComparable<Current>
{
    private Current(double value) => Amperes = value;

    /// <summary>Zero amperes.</summary>
    public static Current Zero => default;

    /// <summary>Value in amperes.</summary>
    public double Amperes { get; }

    public static Current FromAmperes(double amperes) => new(Finite.Checked(amperes));

    public static Current operator +(Current a, Current b) => new(a.Amperes + b.Amperes);

    public static Current operator -(Current a, Current b) => new(a.Amperes - b.Amperes);

    public static Current operator -(Current a) => new(-a.Amperes);

    public static Current operator *(Current a, double factor) => new(a.Amperes * factor);

    public static Current operator *(double factor, Current a) => new(a.Amperes * factor);

    public static Current operator /(Current a, double divisor) => new(a.Amperes / divisor);

    public static double operator /(Current a, Current b) => a.Amperes / b.Amperes;

    public static bool operator <(Current a, Current b) => a.Amperes < b.Amperes;

    public static bool operator >(Current a, Current b) => a.Amperes > b.Amperes;

    public static bool operator <=(Current a, Current b) => a.Amperes <= b.Amperes;

    public static bool operator >=(Current a, Current b) => a.Amperes >= b.Amperes;

    public static Voltage operator *(Current i, Resistance r) => Voltage.FromVolts(i.Amperes * r.Ohms);

    public static Charge operator *(Current i, Duration t) => Charge.FromCoulombs(i.Amperes * t.Seconds);

    public int CompareTo(Current other) => Amperes.CompareTo(other.Amperes);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Amperes:G6} A");
}
