using System.Globalization;

namespace Endurance.Quantities;

/// <summary>Electric charge; either sign. A battery capacity enters as ampere-hours.</summary>
/// <remarks>Stored in coulombs; <c>default</c> is zero. Factories throw <see cref="ArgumentOutOfRangeException"/> on NaN and infinities.</remarks>
public readonly record struct Charge : IComparable<Charge>
{
    private Charge(double value) => Coulombs = value;

    /// <summary>Zero coulombs.</summary>
    public static Charge Zero => default;

    /// <summary>Value in coulombs.</summary>
    public double Coulombs { get; }

    /// <summary>Value in ampere-hours.</summary>
    public double AmpereHours => Coulombs / 3600.0;

    public static Charge FromAmpereHours(double ampereHours) => new(Finite.Checked(ampereHours * 3600.0));

    public static Charge FromCoulombs(double coulombs) => new(Finite.Checked(coulombs));

    public static Charge operator +(Charge a, Charge b) => new(a.Coulombs + b.Coulombs);

    public static Charge operator -(Charge a, Charge b) => new(a.Coulombs - b.Coulombs);

    public static Charge operator -(Charge a) => new(-a.Coulombs);

    public static Charge operator *(Charge a, double factor) => new(a.Coulombs * factor);

    public static Charge operator *(double factor, Charge a) => new(a.Coulombs * factor);

    public static Charge operator /(Charge a, double divisor) => new(a.Coulombs / divisor);

    public static double operator /(Charge a, Charge b) => a.Coulombs / b.Coulombs;

    public static bool operator <(Charge a, Charge b) => a.Coulombs < b.Coulombs;

    public static bool operator >(Charge a, Charge b) => a.Coulombs > b.Coulombs;

    public static bool operator <=(Charge a, Charge b) => a.Coulombs <= b.Coulombs;

    public static bool operator >=(Charge a, Charge b) => a.Coulombs >= b.Coulombs;

    public static Duration operator /(Charge q, Current i) => Duration.FromSeconds(q.Coulombs / i.Amperes);

    public int CompareTo(Charge other) => Coulombs.CompareTo(other.Coulombs);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Coulombs:G6} C");
}
