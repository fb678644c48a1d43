using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;

namespace Endurance.Studies.LayoutComparison;

/// <summary>What one layout is worth.</summary>
public sealed record LayoutResult
{
    public required string Name { get; init; }

    public required Scenario Scenario { get; init; }

    /// <summary>In the order of the scenario.</summary>
    public required ImmutableArray<LayoutCase> Cases { get; init; }

    /// <summary>See <see cref="PartsCount"/>.</summary>
    public required int Parts { get; init; }

    /// <summary>Single failures, on their own and in each case, after which every requirement is still met.</summary>
    public required int FailuresSurvived { get; init; }

    public required int FailuresTried { get; init; }

    /// <summary>Over all cases.</summary>
    public int Findings => Cases.Sum(one => one.Result.Findings.Length);

    /// <summary>Fail when any case fails.</summary>
    public Verdict Verdict => Cases.Any(one => one.Result.Verdict == Verdict.Fail) ? Verdict.Fail
        : Cases.Any(one => one.Result.Verdict == Verdict.Pass) ? Verdict.Pass : Verdict.None;
}
