using System.Globalization;

namespace Endurance.Quantities;

/// <summary>Energy; either sign.</summary>
/// <remarks>Stored in joules; <c>default</c> is zero. Factories throw <see cref="ArgumentOutOfRangeException"/> on NaN and infinities.</remarks>
public readonly record struct Energy : IComparable<Energy>
{
    private Energy(double value) => Joules = value;

    /// <summary>Zero joules.</summary>
    public static Energy Zero => default;

    /// <summary>Value in joules.</summary>
    public double Joules { get; }

    /// <summary>Value in watt-hours.</summary>
    public double WattHours => Joules / 3600.0;

    public static Energy FromWattHours(double wattHours) => new(Finite.Checked(wattHours * 3600.0));

    public static Energy FromJoules(double joules) => new(Finite.Checked(joules));

    public static Energy operator +(Energy a, Energy b) => new(a.Joules + b.Joules);

    public static Energy operator -(Energy a, Energy b) => new(a.Joules - b.Joules);

    public static Energy operator -(Energy a) => new(-a.Joules);

    public static Energy operator *(Energy a, double factor) => new(a.Joules * factor);

    public static Energy operator *(double factor, Energy a) => new(a.Joules * factor);

    public static Energy operator /(Energy a, double divisor) => new(a.Joules / divisor);

    public static double operator /(Energy a, Energy b) => a.Joules / b.Joules;

    public static bool operator <(Energy a, Energy b) => a.Joules < b.Joules;

    public static bool operator >(Energy a, Energy b) => a.Joules > b.Joules;

    public static bool operator <=(Energy a, Energy b) => a.Joules <= b.Joules;

    public static bool operator >=(Energy a, Energy b) => a.Joules >= b.Joules;

    public int CompareTo(Energy other) => Joules.CompareTo(other.Joules);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Joules:G6} J");
}
