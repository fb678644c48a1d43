using System.Globalization;

namespace Endurance.Quantities;

/// <summary>Thermodynamic temperature, above 0 K. Files give degrees Celsius or Fahrenheit.</summary>
/// <remarks>Has no addition: a difference of temperatures is a <see cref="double"/> in kelvin. <c>default</c> is 0 K and is not a legal temperature.</remarks>
public readonly record struct Temperature : IComparable<Temperature>
{
    /// <summary>0 degrees Celsius in kelvin.</summary>
    public const double CelsiusZero = 273.15;

    private Temperature(double kelvin) => Kelvin = kelvin;

    /// <summary>Value in kelvin.</summary>
    public double Kelvin { get; }

    /// <summary>Value in degrees Celsius.</summary>
    public double Celsius => Kelvin - CelsiusZero;

    public static Temperature FromKelvin(double kelvin) =>
        kelvin > 0 ? new(Finite.Checked(kelvin)) : throw new ArgumentOutOfRangeException(nameof(kelvin), kelvin, "A temperature must be above 0 K.");

    public static Temperature FromCelsius(double celsius) => FromKelvin(celsius + CelsiusZero);

    public static bool operator <(Temperature a, Temperature b) => a.Kelvin < b.Kelvin;

    public static bool operator >(Temperature a, Temperature b) => a.Kelvin > b.Kelvin;

    public static bool operator <=(Temperature a, Temperature b) => a.Kelvin <= b.Kelvin;

    public static bool operator >=(Temperature a, Temperature b) => a.Kelvin >= b.Kelvin;

    public int CompareTo(Temperature other) => Kelvin.CompareTo(other.Kelvin);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Celsius:G6} degC");
}
