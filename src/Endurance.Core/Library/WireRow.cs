using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Library;

/// <summary>One gauge of <see cref="WireTable"/>.</summary>
/// <param name="Gauge">American wire gauge.</param>
/// <param name="OhmsPerThousandFeet">Greatest resistance at 20 degC, ohm per 1000 ft.</param>
/// <param name="CircularMils">Conductor area, circular mils.</param>
/// <param name="AmperesAt105">Continuous amperes in a bundle with 105 degC insulation.</param>
/// <param name="AmperesAt150">Continuous amperes in a bundle with 150 degC insulation.</param>
/// <param name="AmperesAt200">Continuous amperes in a bundle with 200 degC insulation.</param>
public sealed record WireRow(
    WireGauge Gauge, double OhmsPerThousandFeet, int CircularMils, double AmperesAt105, double AmperesAt150, double AmperesAt200)
{
    /// <summary>Greatest resistance at 20 degC.</summary>
    public double OhmsPerMetreAt20 => OhmsPerThousandFeet / WireTable.MetresPerThousandFeet;

    /// <summary>Publication, table and page.</summary>
    public string Source { get; init; } = WireTable.Source;

    /// <summary>Continuous current in a bundle.</summary>
    public Current RatingInBundle(Insulation insulation) => Current.FromAmperes(insulation switch
    {
        Insulation.Rated105 => AmperesAt105,
        Insulation.Rated150 => AmperesAt150,
        Insulation.Rated200 => AmperesAt200,
        _ => throw new ArgumentOutOfRangeException(nameof(insulation), insulation, "Unknown insulation."),
    });
}
