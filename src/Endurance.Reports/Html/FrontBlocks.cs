using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies;
using Endurance.Studies.FailureCases;

namespace Endurance.Reports.Html;

/// <summary>The answer on the first page.</summary>
internal static class FrontBlocks
{
    private const int AfterFirstLoss = 3;

    public static ImmutableArray<ReportBlock> Of(ReviewFacts facts) =>
    [
        new ReportParagraph(Verdict(facts.Cases)),
        .. StudyBlocks.ListUnlessEmpty("Cases that could not be run to their end; they count as failed", [.. LeftOut.Of(facts.Cases).Select(one => one.Told)]),
        .. FailureCaseReport.Summary(facts.Scenario, facts.Cases).Select(block => block is ReportTable table ? WithRoles(table, facts) : block),
        .. RoleNote(facts.Scenario),
        .. Loads(facts),
    ];

    private static string Verdict(ImmutableArray<CaseResult> cases)
    {
        var failed = cases.Where(result => result.Verdict == Studies.FailureCases.Verdict.Fail).Select(result => result.Name).ToArray();
        if (failed.Length > 0)
            return $"Some requirement is NOT met in {RoundedNumber.Short(failed.Length, 0)} of {RoundedNumber.Short(cases.Length, 0)} failure cases: {string.Join(", ", failed)}.";
        return cases.All(result => result.Verdict == Studies.FailureCases.Verdict.None)
            ? "No requirement applies to any failure case, so nothing is judged."
            : "Every requirement that applies is met in every failure case.";
    }

    /// <summary>The first table with the loss of the last display and of the last ignition, where names tell which loads those are.</summary>
    private static ReportTable WithRoles(ReportTable table, ReviewFacts facts)
    {
        var roles = LoadRole.Of(facts.Scenario);
        return table with
        {
            Columns = table.Columns.InsertRange(AfterFirstLoss, roles.Select(role => new ReportColumn($"last {role.Word} lost", "min"))),
            Rows = [.. table.Rows.Zip(facts.Cases, (row, result) => row.InsertRange(
                AfterFirstLoss, roles.Select(role => (ReportCell)LastLost(result, role, facts.Scenario.Horizon))))],
        };
    }

    private static IEnumerable<ReportBlock> RoleNote(Scenario scenario)
    {
        var roles = LoadRole.Of(scenario);
        if (!roles.IsEmpty)
            yield return new ReportParagraph(string.Join(" ", roles.Select(role => $"Last {role.Word} lost looks at the essential loads with that word in their name: {string.Join(", ", role.Loads)}.")));
    }

    /// <summary>The load that stays longest; one that was switched off, or never on, counts only where there is no other.</summary>
    private static string LastLost(CaseResult result, LoadRole role, Duration horizon)
    {
        var loads = result.Run.Loads.Where(load => role.Loads.Contains(load.Name, StringComparer.Ordinal)).ToArray();
        var used = loads.Where(load => load.WasConnected && (load.TimePowered is not null || load.TimeShed is null)).ToArray();
        var last = Array.Find(used, load => load.TimePowered is null) ?? used.MaxBy(load => load.TimePowered!.Value.Seconds);
        return Minutes(last ?? Array.Find(loads, load => load.WasConnected) ?? loads[0], horizon, result.BreakOff);
    }

    private static ImmutableArray<ReportBlock> Loads(ReviewFacts facts)
    {
        var essential = facts.Scenario.EssentialLoads;
        if (essential.IsEmpty)
            return [];
        return
        [
            new ReportTable(
                "Minutes until each essential load is first lost",
                [new("failure case"), .. essential.Select(name => new ReportColumn(name, "min"))],
                [.. facts.Cases.Select(result => ImmutableArray.Create<ReportCell>(
                    [result.Name, .. essential.Select(name => (ReportCell)Minutes(result.Run.Loads.Single(load => string.Equals(load.Name, name, StringComparison.Ordinal)), facts.Scenario.Horizon, result.BreakOff))]))]),
        ];
    }

    private static string Minutes(LoadOutcome load, Duration horizon, BreakOff? breakOff)
    {
        if (!load.WasConnected)
            return "not on";
        return load.TimePowered is null && load.TimeShed is { } shed ? $"off at {CellText.Minutes(shed)}" : CellText.MinutesWithin(load.TimePowered, horizon, breakOff);
    }
}
