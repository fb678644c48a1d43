using System.Globalization;

namespace Endurance.Quantities;

/// <summary>Electric resistance.</summary>
/// <remarks>Stored in ohms; <c>default</c> is zero. Factories throw <see cref="ArgumentOutOfRangeException"/> on NaN and infinities.</remarks>
public readonly record struct Resistance : IComparable<Resistance>
{
    private Resistance(double value) => Ohms = value;

    /// <summary>Zero ohms.</summary>
    public static Resistance Zero => default;

    /// <summary>Value in ohms.</summary>
    public double Ohms { get; }

    /// <summary>Value in milliohms.</summary>
    public double Milliohms => Ohms / 1e-3;

    public static Resistance FromMilliohms(double milliohms) => new(Finite.Checked(milliohms * 1e-3));

    public static Resistance FromOhms(double ohms) => new(Finite.Checked(ohms));

    public static Resistance operator +(Resistance a, Resistance b) => new(a.Ohms + b.Ohms);

    public static Resistance operator -(Resistance a, Resistance b) => new(a.Ohms - b.Ohms);

    public static Resistance operator -(Resistance a) => new(-a.Ohms);

    public static Resistance operator *(Resistance a, double factor) => new(a.Ohms * factor);

    public static Resistance operator *(double factor, Resistance a) => new(a.Ohms * factor);

    public static Resistance operator /(Resistance a, double divisor) => new(a.Ohms / divisor);

    public static double operator /(Resistance a, Resistance b) => a.Ohms / b.Ohms;

    public static bool operator <(Resistance a, Resistance b) => a.Ohms < b.Ohms;

    public static bool operator >(Resistance a, Resistance b) => a.Ohms > b.Ohms;

    public static bool operator <=(Resistance a, Resistance b) => a.Ohms <= b.Ohms;

    public static bool operator >=(Resistance a, Resistance b) => a.Ohms >= b.Ohms;

    public int CompareTo(Resistance other) => Ohms.CompareTo(other.Ohms);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Ohms:G6} ohm");
}
