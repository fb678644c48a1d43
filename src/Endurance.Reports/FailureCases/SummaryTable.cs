using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;

namespace Endurance.Reports;

/// <summary>One row a failure case: how long, what goes first, what is required, and by how much it is met.</summary>
internal static class SummaryTable
{
    private static readonly ImmutableArray<ReportColumn> Columns =
    [
        new("failure case"),
        new("lost first"),
        new("lost at", "min"),
        new("left to act", "min"),
        new("must last (min)"),
        new("margin", "min"),
        new("verdict"),
    ];

    public static ReportTable Of(Scenario scenario, ImmutableArray<CaseResult> cases) =>
        new("Endurance by failure case", Columns, [.. cases.Select(result => Row(scenario.Horizon, result))]);

    /// <summary>What the requirement asks for, as the file named it.</summary>
    public static string Subject(Requirement requirement) =>
        requirement.LoadsLabel ?? requirement.Bus ?? string.Join(", ", requirement.Loads);

    private static ImmutableArray<ReportCell> Row(Duration horizon, CaseResult result)
    {
        var deciding = Deciding(result);
        return
        [
            result.Name,
            CellText.LostFirst(result.LimitedBy, result.Endurance, result.BreakOff),
            CellText.MinutesWithin(result.Endurance, horizon, result.BreakOff),
            AfterRecognition(horizon, result),
            deciding is null ? CellText.Absent : $"{Subject(deciding.Requirement)} {CellText.RoundMinutes(deciding.Requirement.Endure)}",
            deciding is null ? CellText.Absent : CellText.Margin(result, deciding, horizon),
            CellText.Judged(result),
        ];
    }

    /// <summary>Failed ones first, then the one with the least margin, then the order of the file.</summary>
    private static RequirementResult? Deciding(CaseResult result) => result.Requirements
        .OrderByDescending(requirement => requirement.Verdict is Verdict.Fail)
        .ThenBy(requirement => requirement.Endurance is { } reached ? (reached - requirement.Requirement.Endure).Seconds : double.PositiveInfinity)
        .FirstOrDefault();

    private static string AfterRecognition(Duration horizon, CaseResult result)
    {
        if (!CellText.IsKnown(result.Endurance, result.BreakOff))
            return CellText.NotKnown;
        if (result.AfterRecognition is { } left)
            return CellText.Minutes(left);
        if (result.Run.Recognition is not { } recognised)
            return "no step";
        return result.Endurance is null ? "more than " + CellText.RoundMinutes(horizon - recognised) : CellText.Absent;
    }
}
