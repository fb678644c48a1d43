using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;
using Endurance.Studies.SingleFailures;

namespace Endurance.Reports;

/// <summary>Failures beside what the same cases do without them.</summary>
/// <param name="scenario">Whose parts failed.</param>
/// <param name="rows">Of single failures, or of pairs.</param>
/// <param name="withoutFailure">Every case as it stands.</param>
/// <param name="singles">Single failures, when the rows are of pairs; else empty.</param>
public sealed class FailureStanding(
    Scenario scenario, ImmutableArray<FailureRow> rows, ImmutableArray<CaseResult> withoutFailure, ImmutableArray<FailureRow> singles)
{
    /// <summary>Whose parts failed.</summary>
    public Scenario Scenario => scenario;

    /// <summary>In the order of the study.</summary>
    public ImmutableArray<FailureRow> Rows => rows;

    /// <summary>The rows are of two failures at once.</summary>
    public bool IsOfPairs => !singles.IsEmpty;

    /// <summary>Names of the cases that miss a requirement without any further failure.</summary>
    public ImmutableArray<string> FailingAsTheyStand { get; } =
        [.. withoutFailure.Where(result => result.Verdict == Verdict.Fail).Select(result => result.Name)];

    /// <summary>Rows that miss a requirement which the case meets without the failure; of pairs, those where neither part alone does it.</summary>
    public ImmutableArray<FailureRow> Losing
    {
        get
        {
            var alone = singles.Where(row => row.Verdict == Verdict.Fail).Select(row => (row.Case, Name: Name(row))).ToHashSet();
            return [.. rows.Where(row => row.Verdict == Verdict.Fail && !FailingAsTheyStand.Contains(row.Case, StringComparer.Ordinal)
                && !Names(row).Any(name => alone.Contains((row.Case, name))))];
        }
    }

    /// <summary>Batteries of which no shorted cell could be tried.</summary>
    public ImmutableArray<UntriedFailure> Untried { get; } = UntriedFailure.Of(scenario);

    /// <summary>Whether a failure takes all of some essential loads, though the case leaves one of them without it.</summary>
    internal bool TakesAll(FailureRow row, ImmutableArray<string> loads)
    {
        var without = withoutFailure.First(result => string.Equals(result.Name, row.Case, StringComparison.Ordinal)).Run.Loads
            .ToDictionary(load => load.Name, load => load.TimePowered, StringComparer.Ordinal);
        return loads.All(load => IsLost(row.Case, load, row.Loads[scenario.EssentialLoads.IndexOf(load)])) && !loads.All(load => IsLost(row.Case, load, without[load]));
    }

    /// <summary>Before a requirement of the case lets it go; at all where none is about it.</summary>
    private bool IsLost(string failureCase, string load, Duration? lost)
    {
        var required = scenario.Requirements.Where(requirement => requirement.Loads.Contains(load) && (requirement.Case ?? failureCase) == failureCase).ToArray();
        return lost is { } time && (required.Length == 0 || required.Any(requirement => time < requirement.Endure));
    }

    /// <summary>How one cell of the matrix stands: its minutes and a word.</summary>
    internal (string Text, Plots.BarKind Kind) Cell(FailureRow row, int load)
    {
        var name = scenario.EssentialLoads[load];
        var isRequired = scenario.Requirements.Any(requirement => requirement.Loads.Contains(name)
            && (requirement.Case is null || string.Equals(requirement.Case, row.Case, StringComparison.Ordinal)));
        var kind = !isRequired ? Plots.BarKind.NothingRequired : row.Lost.Contains(name) ? Plots.BarKind.Missed : Plots.BarKind.Met;
        return (row.Loads[load] is { } lost ? lost == Duration.Zero ? "at once" : CellText.Minutes(lost) : "lasts", kind);
    }

    internal static string Name(FailureRow row) => $"{row.Part}, {row.Mode}";

    /// <summary>The single failures of a row.</summary>
    private static IEnumerable<string> Names(FailureRow row) =>
        row.Part.Split(" + ").Zip(row.Mode.Split(" + "), (part, mode) => $"{part}, {mode}");
}
