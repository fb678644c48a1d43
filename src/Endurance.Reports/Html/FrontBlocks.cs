using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;

namespace Endurance.Reports.Html;

/// <summary>The answer on the first page.</summary>
internal static class FrontBlocks
{
    public static ImmutableArray<ReportBlock> Of(ReviewFacts facts) =>
    [
        new ReportParagraph(Verdict(facts.Cases)),
        .. FailureCaseReport.Summary(facts.Scenario, facts.Cases),
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
