using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;

namespace Endurance.Reports;

/// <summary>The answer for people: first one row a failure case, then each case in detail, then what the answer rests on.</summary>
public static class FailureCaseReport
{
    /// <summary>The whole report.</summary>
    public static ReportDocument Describe(Scenario scenario, ImmutableArray<CaseResult> cases) => new(
        scenario.Title,
        [
            .. Summary(scenario, cases),
            .. InEveryCase(cases),
            .. cases.SelectMany(result => CaseSection.Blocks(scenario, result with { Findings = result.Findings.RemoveAll(Shared(cases).Contains) })),
            .. AssumptionBlocks.Of([.. scenario.Assumptions, .. cases.SelectMany(result => result.Assumptions)]),
            .. StudyBlocks.Closing,
        ]);

    /// <summary>What is found alike in every case is mostly about the scenario itself, and is told once.</summary>
    private static ImmutableArray<ReportBlock> InEveryCase(ImmutableArray<CaseResult> cases) => Shared(cases) is { IsEmpty: false } shared
        ? [new ReportHeading("Found in every case"), .. FindingBlocks.Of(shared)]
        : [];

    /// <summary>Of cases that were run to their end; a single one keeps its own.</summary>
    private static ImmutableArray<Finding> Shared(ImmutableArray<CaseResult> cases)
    {
        var whole = cases.Where(result => result.BreakOff is null).ToArray();
        return whole.Length < 2 ? [] : [.. whole[0].Findings.Distinct().Where(finding => whole.All(result => result.Findings.Contains(finding)))];
    }

    /// <summary>The first table alone.</summary>
    public static ReportDocument DescribeQuiet(Scenario scenario, ImmutableArray<CaseResult> cases) =>
        new(scenario.Title, [SummaryTable.Of(scenario, cases)]);

    /// <summary>The first table and how to read it.</summary>
    internal static ImmutableArray<ReportBlock> Summary(Scenario scenario, ImmutableArray<CaseResult> cases) =>
    [
        SummaryTable.Of(scenario, cases),
        new ReportParagraph(
            "Minutes count from zero of each timeline. \"More than\" means: not within the "
            + $"{CellText.RoundMinutes(scenario.Horizon)} min simulated. Lost first is the first loss of anything that a requirement of the case names, or of any essential load or bus with a cutoff where there is none. Must last is the tightest requirement, and the margin is its own, so it can belong to another part than the one lost first. Left to act counts from recognition: the first step after zero that opens, closes, sheds, connects, starts, restores or selects something. \"No step\" means that nobody acts."),
    ];
}
