using System.Globalization;

namespace Endurance.Quantities;

/// <summary>Length.</summary>
/// <remarks>Stored in metres; <c>default</c> is zero. Factories throw <see cref="ArgumentOutOfRangeException"/> on NaN and infinities.</remarks>
public readonly record struct Length : IComparable<Length>
{
    private Length(double value) => Metres = value;

    /// <summary>Zero metres.</summary>
    public static Length Zero => default;

    /// <summary>Value in metres.</summary>
    public double Metres { get; }

    /// <summary>Value in international feet of 0.3048 m.</summary>
    public double Feet => Metres / 0.3048;

    public static Length FromFeet(double feet) => new(Finite.Checked(feet * 0.3048));

    public static Length FromMetres(double metres) => new(Finite.Checked(metres));

    public static Length operator +(Length a, Length b) => new(a.Metres + b.Metres);

    public static Length operator -(Length a, Length b) => new(a.Metres - b.Metres);

    public static Length operator -(Length a) => new(-a.Metres);

    public static Length operator *(Length a, double factor) => new(a.Metres * factor);

    public static Length operator *(double factor, Length a) => new(a.Metres * factor);

    public static Length operator /(Length a, double divisor) => new(a.Metres / divisor);

    public static double operator /(Length a, Length b) => a.Metres / b.Metres;

    public static bool operator <(Length a, Length b) => a.Metres < b.Metres;

    public static bool operator >(Length a, Length b) => a.Metres > b.Metres;

    public static bool operator <=(Length a, Length b) => a.Metres <= b.Metres;

    public static bool operator >=(Length a, Length b) => a.Metres >= b.Metres;

    public int CompareTo(Length other) => Metres.CompareTo(other.Metres);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Metres:G6} m");
}
