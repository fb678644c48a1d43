using System.Collections.Immutable;
using Endurance.Findings;

namespace Endurance.Studies.Wiring;

/// <summary>Every wire of known gauge and length, judged.</summary>
/// <param name="Rows">Feeds in the order of the scenario, then loads.</param>
/// <param name="WithoutGauge">Feeds and loads that cannot be judged, having no wire or a plain resistance.</param>
/// <param name="Assumptions">What the judgement rests on besides the scenario.</param>
public sealed record WiringResult(ImmutableArray<WiringRow> Rows, ImmutableArray<string> WithoutGauge, ImmutableArray<Assumption> Assumptions)
{
    /// <summary>Cases that could not be run to their end: of these only the currents up to there were judged.</summary>
    public ImmutableArray<LeftOut> LeftOut { get; init; } = [];
}
