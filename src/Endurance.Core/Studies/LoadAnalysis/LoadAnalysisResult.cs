using System.Collections.Immutable;
using Endurance.Findings;

namespace Endurance.Studies.LoadAnalysis;

/// <summary>The load analysis of an aircraft.</summary>
/// <param name="Items">Everything that draws.</param>
/// <param name="Totals">For each phase each bus that feeds something, then all buses together.</param>
/// <param name="Shares">For each phase each group of alternators.</param>
/// <param name="AmpMinutes">For each failure case without generation.</param>
/// <param name="Findings">What a reviewer would ask about.</param>
public sealed record LoadAnalysisResult(
    ImmutableArray<LoadItem> Items,
    ImmutableArray<LoadTotal> Totals,
    ImmutableArray<AlternatorShare> Shares,
    ImmutableArray<AmpMinuteComparison> AmpMinutes,
    ImmutableArray<Finding> Findings)
{
    /// <summary>Failure cases that could not be run to their end, so that their simulated minutes are not known.</summary>
    public ImmutableArray<LeftOut> LeftOut { get; init; } = [];
}
