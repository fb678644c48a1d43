using Endurance.Components;

namespace Endurance.Library;

/// <summary>One gauge of <see cref="WireTable"/>.</summary>
/// <param name="Gauge">American wire gauge.</param>
/// <param name="OhmsPerThousandFeet">Greatest resistance at 20 degC, ohm per 1000 ft.</param>
public sealed record WireRow(WireGauge Gauge, double OhmsPerThousandFeet)
{
    /// <summary>Publication, table and page.</summary>
    public string Source { get; init; } = WireTable.Source;
}
