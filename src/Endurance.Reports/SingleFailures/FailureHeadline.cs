using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.SingleFailures;

namespace Endurance.Reports;

/// <summary>What a builder must know first: which failure takes the most, and which takes everything that a requirement protects.</summary>
internal static class FailureHeadline
{
    private const int MostNamed = 4;

    private static readonly ImmutableArray<ReportColumn> Columns =
        [new("question"), new("failure"), new("case"), new("essential loads lost too early"), new("first lost", "min")];

    public static ReportTable Of(FailureStanding standing)
    {
        var own = standing.Rows.Where(row => row.Case == SingleFailureStudy.OnItsOwn).ToImmutableArray();
        var inCases = standing.Rows.Where(row => row.Case != SingleFailureStudy.OnItsOwn && !standing.FailingAsTheyStand.Contains(row.Case)).ToImmutableArray();
        return new ReportTable(
            standing.IsOfPairs ? "What two failures at once take" : "What a single failure takes",
            Columns,
            [
                .. Worst("takes the most, soonest, on its own", own),
                .. Worst("takes the most, soonest, in a failure case", inCases),
                .. LoadRole.Of(standing.Scenario).SelectMany(role => WholeRole(standing, role)),
                .. standing.Scenario.Requirements.Where(requirement => !requirement.Loads.IsEmpty).SelectMany(requirement => WholeRequirement(standing, requirement)),
            ]);
    }

    private static IEnumerable<ImmutableArray<ReportCell>> Worst(string question, ImmutableArray<FailureRow> rows)
    {
        if (rows.IsEmpty)
            return [];
        var worst = rows.OrderByDescending(row => row.Lost.Length).ThenBy(row => row.Endurance?.Seconds ?? double.PositiveInfinity).First();
        return worst.Lost.IsEmpty
            ? [StudyBlocks.Row(question, "none: no essential load is lost before it may be", CellText.Absent, CellText.Absent, CellText.Absent)]
            : [Row(question, worst, FirstLost(worst))];
    }

    /// <summary>The soonest few of the failures that take every load of a requirement.</summary>
    private static IEnumerable<ImmutableArray<ReportCell>> WholeRequirement(FailureStanding standing, Requirement requirement)
    {
        var question = $"takes every load of: {SummaryTable.Subject(requirement)} {CellText.RoundMinutes(requirement.Endure)} min{(requirement.Case is { } only ? $" ({only})" : "")}";
        return Soonest(question, standing.Rows
            .Where(row => !standing.FailingAsTheyStand.Contains(row.Case) && (requirement.Case is null || requirement.Case == row.Case) && requirement.Loads.All(row.Lost.Contains))
            .OrderBy(row => FirstLost(row)?.Seconds ?? double.PositiveInfinity));
    }

    /// <summary>The failures that stop the engine, or leave nothing to look at: alone first, then the soonest.</summary>
    private static IEnumerable<ImmutableArray<ReportCell>> WholeRole(FailureStanding standing, LoadRole role) =>
        Soonest(role.Question, standing.Rows
            .Where(row => standing.TakesAll(row, role.Loads))
            .OrderBy(row => row.Case != SingleFailureStudy.OnItsOwn)
            .ThenBy(row => Times(standing, row, role).Max(lost => lost.Time)),
            row => string.Join(", ", Times(standing, row, role).Select(lost => $"{lost.Load} {CellText.MinutesOr(lost.Time, CellText.Absent)} min")));

    private static IEnumerable<(string Load, Duration? Time)> Times(FailureStanding standing, FailureRow row, LoadRole role) =>
        role.Loads.Select(load => (load, row.Loads[standing.Scenario.EssentialLoads.IndexOf(load)]));

    private static IEnumerable<ImmutableArray<ReportCell>> Soonest(string question, IEnumerable<FailureRow> ordered, Func<FailureRow, string>? lost = null)
    {
        var taking = ordered.DistinctBy(FailureStanding.Name, StringComparer.Ordinal).ToImmutableArray();
        if (taking.IsEmpty)
            return [StudyBlocks.Row(question, "none", CellText.Absent, CellText.Absent, CellText.Absent)];
        var named = taking.Take(MostNamed).Select((row, i) => Row(i == 0 ? question : "", row, FirstLost(row), lost));
        return taking.Length <= MostNamed
            ? named
            : named.Append(StudyBlocks.Row("", $"and {taking.Length - MostNamed} more", CellText.Absent, CellText.Absent, CellText.Absent));
    }

    private static Duration? FirstLost(FailureRow row) => row.Loads.Where(time => time is not null).Min();

    private static ImmutableArray<ReportCell> Row(string question, FailureRow row, Duration? first, Func<FailureRow, string>? lost = null) =>
    [
        question,
        FailureStanding.Name(row),
        row.Case,
        lost?.Invoke(row) ?? $"{row.Lost.Length} of {row.Loads.Length}: {string.Join(", ", row.Lost)}",
        CellText.MinutesOr(first, CellText.Absent),
    ];
}
