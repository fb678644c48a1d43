using System.Globalization;

namespace Endurance.Quantities;

/// <summary>Power; either sign.</summary>
/// <remarks>Stored in watts; <c>default</c> is zero. Factories throw <see cref="ArgumentOutOfRangeException"/> on NaN and infinities.</remarks>
public readonly record struct Power : IComparable<Power>
{
    private Power(double value) => Watts = value;

    /// <summary>Zero watts.</summary>
    public static Power Zero => default;

    /// <summary>Value in watts.</summary>
    public double Watts { get; }

    public static Power FromWatts(double watts) => new(Finite.Checked(watts));

    public static Power operator +(Power a, Power b) => new(a.Watts + b.Watts);

    public static Power operator -(Power a, Power b) => new(a.Watts - b.Watts);

    public static Power operator -(Power a) => new(-a.Watts);

    public static Power operator *(Power a, double factor) => new(a.Watts * factor);

    public static Power operator *(double factor, Power a) => new(a.Watts * factor);

    public static Power operator /(Power a, double divisor) => new(a.Watts / divisor);

    public static double operator /(Power a, Power b) => a.Watts / b.Watts;

    public static bool operator <(Power a, Power b) => a.Watts < b.Watts;

    public static bool operator >(Power a, Power b) => a.Watts > b.Watts;

    public static bool operator <=(Power a, Power b) => a.Watts <= b.Watts;

    public static bool operator >=(Power a, Power b) => a.Watts >= b.Watts;

    public static Energy operator *(Power p, Duration t) => Energy.FromJoules(p.Watts * t.Seconds);

    public int CompareTo(Power other) => Watts.CompareTo(other.Watts);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Watts:G6} W");
}
