using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;

namespace Endurance.Reports.Html;

/// <summary>The answer on the first page.</summary>
internal static class FrontBlocks
{
    private const int AfterFirstLoss = 3;

    private static readonly ImmutableArray<(string Word, ReportColumn Column)> Kinds =
    [
        ("display", new("first display lost", "min")),
        ("ignition", new("first ignition lost", "min")),
    ];

    public static ImmutableArray<ReportBlock> Of(ReviewFacts facts) =>
    [
        new ReportParagraph(Verdict(facts.Cases)),
        .. FailureCaseReport.Summary(facts.Scenario, facts.Cases).Select(block => block is ReportTable table ? WithKinds(table, facts) : block),
        .. KindNote(facts.Scenario),
        .. Loads(facts),
    ];

    private static string Verdict(ImmutableArray<CaseResult> cases)
    {
        var failed = cases.Where(result => result.Verdict == Studies.FailureCases.Verdict.Fail).Select(result => result.Name).ToArray();
        if (failed.Length > 0)
            return $"Some requirement is NOT met in {RoundedNumber.Short(failed.Length, 0)} of {RoundedNumber.Short(cases.Length, 0)} failure cases: {string.Join(", ", failed)}.";
        return cases.All(result => result.Verdict == Studies.FailureCases.Verdict.None)
            ? "No requirement applies to any failure case, so nothing is judged."
            : $"Every requirement that applies is met in every failure case.";
    }

    /// <summary>The first table with the first loss of a display and of an ignition, where names tell which loads those are.</summary>
    private static ReportTable WithKinds(ReportTable table, ReviewFacts facts)
    {
        var kinds = Kinds.Where(kind => Named(facts.Scenario, kind.Word).Length > 0).ToArray();
        return table with
        {
            Columns = table.Columns.InsertRange(AfterFirstLoss, kinds.Select(kind => kind.Column)),
            Rows = [.. table.Rows.Zip(facts.Cases, (row, result) => row.InsertRange(
                AfterFirstLoss, kinds.Select(kind => (ReportCell)FirstLost(result, Named(facts.Scenario, kind.Word), facts.Scenario.Horizon))))],
        };
    }

    private static IEnumerable<ReportBlock> KindNote(Scenario scenario)
    {
        var kinds = Kinds.Select(kind => (kind.Word, Names: Named(scenario, kind.Word))).Where(kind => kind.Names.Length > 0).ToArray();
        if (kinds.Length > 0)
            yield return new ReportParagraph(string.Join(" ", kinds.Select(kind => $"First {kind.Word} lost looks at the loads with that word in their name: {string.Join(", ", kind.Names)}.")));
    }

    private static string[] Named(Scenario scenario, string word) =>
        [.. scenario.Loads.Select(load => load.Name).Where(name => name.Contains(word, StringComparison.OrdinalIgnoreCase))];

    private static string FirstLost(CaseResult result, string[] names, Duration horizon)
    {
        var loads = result.Run.Loads.Where(load => names.Contains(load.Name, StringComparer.Ordinal)).ToArray();
        var earliest = loads.Where(load => load.TimePowered is not null).MinBy(load => load.TimePowered!.Value.Seconds)
            ?? Array.Find(loads, load => load.WasConnected && load.TimeShed is null)
            ?? Array.Find(loads, load => load.WasConnected)
            ?? loads[0];
        return Minutes(earliest, horizon);
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
                    [result.Name, .. essential.Select(name => (ReportCell)Minutes(result.Run.Loads.Single(load => string.Equals(load.Name, name, StringComparison.Ordinal)), facts.Scenario.Horizon))]))]),
        ];
    }

    private static string Minutes(LoadOutcome load, Duration horizon)
    {
        if (!load.WasConnected)
            return "not on";
        return load.TimePowered is null && load.TimeShed is { } shed ? $"off at {CellText.Minutes(shed)}" : CellText.MinutesWithin(load.TimePowered, horizon);
    }
}
