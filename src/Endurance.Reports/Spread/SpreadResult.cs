using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Studies.Adjustment;
using Endurance.Studies.FailureCases;
using Endurance.Studies.Spread;
using Endurance.Studies.Sweeps;

namespace Endurance.Reports;

/// <summary>What a spread found, and what it was drawn from.</summary>
public sealed record SpreadResult
{
    public required Scenario Scenario { get; init; }

    public required SpreadOptions Options { get; init; }

    /// <summary>In the order of the scenario.</summary>
    public required ImmutableArray<SpreadCase> Cases { get; init; }

    /// <summary>Every case as the scenario says, without tolerances.</summary>
    public required ImmutableArray<CaseResult> AsWritten { get; init; }

    /// <summary>Each tolerance alone; empty when that was not asked for.</summary>
    public required ImmutableArray<SensitivityRow> Sensitivity { get; init; }

    /// <summary>Every sample meets every requirement.</summary>
    public bool IsMetByAll => Cases.All(one => one.BreakOffs.IsEmpty && one.Requirements.All(requirement => requirement.Met == Options.Samples));

    /// <summary>The tolerances' effects on one case, largest change of minutes first; a case not lost counts to the horizon.</summary>
    internal ImmutableArray<SensitivityRow> Ranked(int caseIndex) =>
        [.. Sensitivity.OrderByDescending(row => Math.Abs(MinutesOf(row.High, caseIndex) - MinutesOf(row.Low, caseIndex)))];

    /// <summary>Minutes of a case, the horizon standing for more.</summary>
    internal double MinutesOf(SweepPoint point, int caseIndex) => (point.Cases[caseIndex].Endurance ?? Scenario.Horizon).Minutes;

    internal QuantityKind KindOf(string quantity) => AdjustableQuantities.Find(Scenario, quantity)?.Kind ?? QuantityKind.Number;

    /// <summary>A group stands at a share of every distribution in it.</summary>
    internal QuantityKind KindOf(SensitivityRow row) => row.IsGroup ? QuantityKind.Fraction : KindOf(row.Tolerances[0].Quantity);

    internal static string Words(SensitivityRow row) =>
        row.IsGroup ? $"{row.Quantity} ({string.Join(", ", row.Tolerances.Select(tolerance => tolerance.Quantity))})" : row.Quantity;
}
