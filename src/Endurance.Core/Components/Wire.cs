using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>One conductor, one way.</summary>
public sealed record Wire
{
    /// <summary>Constant of the copper resistance law R(T) = R20 (234.5 + T)/254.5, degC; FAA AC 43.13-1B, chapter 11, page 11-22.</summary>
    public const double CopperInferredZero = 234.5;

    /// <summary>End to end at the conductor's temperature; above zero.</summary>
    public required Resistance Resistance { get; init; }

    /// <summary><see langword="null"/> when the resistance was given.</summary>
    public WireGauge? Gauge { get; init; }

    /// <summary><see langword="null"/> when the resistance was given.</summary>
    public Length? Length { get; init; }

    /// <summary>Of the conductor; <see langword="null"/> when the resistance was given.</summary>
    public Temperature? ConductorTemperature { get; init; }

    /// <summary>Copper resistance at a temperature over that at 20 degC.</summary>
    /// <remarks>(234.5 + T)/254.5 with T in degC: FAA AC 43.13-1B, chapter 11, page 11-22.</remarks>
    public static double CopperFactorAt(Temperature conductor) => (CopperInferredZero + conductor.Celsius) / (CopperInferredZero + 20);

    /// <summary>A wire of so many ohms per metre at 20 degC, at its conductor temperature.</summary>
    public static Wire OfGauge(WireGauge gauge, Length length, double ohmsPerMetreAt20, Temperature conductor) => new()
    {
        Resistance = Resistance.FromOhms(ohmsPerMetreAt20 * length.Metres * CopperFactorAt(conductor)),
        Gauge = gauge,
        Length = length,
        ConductorTemperature = conductor,
    };
}
