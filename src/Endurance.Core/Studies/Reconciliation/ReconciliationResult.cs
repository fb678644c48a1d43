using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;

namespace Endurance.Studies.Reconciliation;

/// <summary>A filled card beside its predictions, and what the measurements do to the minutes.</summary>
public sealed record ReconciliationResult
{
    /// <summary>As it was before.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>In the order of the card, those not measured too.</summary>
    public required ImmutableArray<ComparedReading> Readings { get; init; }

    /// <summary>Likely causes first, then what could not be used or explained.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Loads measured alone, in the order of the scenario.</summary>
    public required ImmutableArray<MeasuredLoad> Loads { get; init; }

    public required ImmutableArray<CaseResult> Before { get; init; }

    /// <summary>With the measured loads; same cases, same order.</summary>
    public required ImmutableArray<CaseResult> After { get; init; }

    public bool IsMet => After.All(result => result.Verdict != Verdict.Fail);

    public int Count(ReadingVerdict verdict) => Readings.Count(reading => reading.Verdict == verdict);
}
