using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Library;

/// <summary>One class of <see cref="DiodeTable"/>: a diode that stands for many of its size.</summary>
public sealed record DiodeClass
{
    /// <summary>As a scenario names it.</summary>
    public required string Name { get; init; }

    /// <summary>What it is, in the words of the trade.</summary>
    public required string Title { get; init; }

    /// <summary>The junction stays at 27 degC: a warmer one drops less, so minutes come out short rather than long.</summary>
    public required Diode Diode { get; init; }

    /// <summary>Mean forward current it is sold for.</summary>
    public required Current Rated { get; init; }

    /// <summary>Highest junction temperature; <see langword="null"/>: not known.</summary>
    public Temperature? MaximumJunction { get; init; }

    /// <summary>Of the data sheet, K/W, from junction to the place that <see cref="HeatPathTo"/> names; <see langword="null"/>: not known.</summary>
    public double? HeatPath { get; init; }

    /// <summary>Such as <c>case</c>; <see langword="null"/> without <see cref="HeatPath"/>.</summary>
    public string? HeatPathTo { get; init; }

    /// <summary>Where the numbers come from, and what in them is assumed.</summary>
    public required string Source { get; init; }

    /// <summary>The numbers of the diode in one line.</summary>
    public string Values => Diode switch
    {
        JunctionDiode junction => FormattableString.Invariant($"saturation current {junction.SaturationCurrent.Amperes * 1e6:G4} uA, ideality {junction.Ideality:G4}, series resistance {junction.SeriesResistance.Milliohms:G4} mohm at {junction.Temperature.Celsius:0.#} degC"),
        IdealDiodeController controller => FormattableString.Invariant($"regulated drop {controller.RegulatedDrop.Volts * 1000:0.#} mV, then {controller.OnResistance.Milliohms:G4} mohm"),
        _ => "",
    };
}
