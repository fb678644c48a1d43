using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Studies.Wiring;
using static Endurance.Reports.StudyBlocks;

namespace Endurance.Reports;

/// <summary>Judged wires for people.</summary>
public static class WiringReport
{
    public static ReportDocument Describe(Scenario scenario, WiringResult result) => new(
        scenario.Title,
        [
            .. Body(result),
            .. FindingBlocks.Of([.. result.Rows.SelectMany(row => row.Findings)]),
            .. AssumptionBlocks.Of([.. result.Assumptions, .. OfWires(scenario, result)]),
        ]);

    /// <summary>Without findings and assumptions.</summary>
    internal static ImmutableArray<ReportBlock> Body(WiringResult result) =>
    [
        result.Rows.IsEmpty
            ? new ReportParagraph("No feed and no load has a wire with gauge and length, so there is nothing to judge. Write wire: {gauge: 12 AWG, length: 4 ft}.")
            : Drops(result),
        .. result.Rows.IsEmpty ? ImmutableArray<ReportBlock>.Empty : [Currents(result)],
        .. Silent(result),
        .. ListUnlessEmpty("Cases that could not be run to their end; of these only the currents up to there are judged", [.. result.LeftOut.Select(one => one.Told)]),
    ];

    private static ReportTable Drops(WiringResult result) => new(
        "Voltage drop",
        [
            new("part"), new("gauge"), new("run", "ft"), new("current", "A"), new("for"), new("drop", "V"), new("allowed", "V"),
            new("longest run", "ft"), new("smallest gauge"), new("verdict"),
        ],
        [.. result.Rows.Select(row => Row(
            row.Part,
            row.Run.Gauge.ToString(),
            RoundedNumber.Fixed(row.Run.Length.Feet, 1),
            CellText.Amperes(row.Deciding),
            row.IsShortDeciding ? "short" : "steady",
            CellText.Volts(row.Drop),
            CellText.Volts(row.Limit),
            row.LongestRun is { } longest ? RoundedNumber.Fixed(longest.Feet, 1) : CellText.Absent,
            row.SmallestGauge?.ToString() ?? "none",
            Judged(row.Verdict)))]);

    private static ReportTable Currents(WiringResult result) => new(
        "Current and protection",
        [
            new("part"), new("gauge"), new("steady", "A"), new("short", "A"), new("from"), new("conductor", "degC"), new("rating", "A"),
            new("protection", "A"), new("at most", "A"), new("switch needs", "A"), new("load type"),
        ],
        [.. result.Rows.Select(row => Row(
            row.Part,
            row.Run.Thinnest.ToString(),
            CellText.Amperes(row.Current.Steady),
            CellText.Amperes(row.Current.Short),
            row.Current.Source == CurrentSource.Simulated ? "simulated" : "stated",
            row.HotConductor is { } hot ? RoundedNumber.Fixed(hot.Celsius, 0) : CellText.Absent,
            row.Rating is { } rating ? RoundedNumber.Short(rating.Amperes, 1) : CellText.Absent,
            row.Protection is { } fitted ? RoundedNumber.Short(fitted.Rating.Amperes, 1) : "none",
            row.LargestProtection is { } largest ? RoundedNumber.Short(largest.Amperes, 1) : CellText.Absent,
            row.Switch is { } need ? RoundedNumber.Short(need.Rating.Amperes, 1) : CellText.Absent,
            row.Switch is { } type ? Wording.Of(type.Type) + (type.IsGuess ? " (guess)" : "") : CellText.Absent))]);

    private static ImmutableArray<ReportBlock> Silent(WiringResult result) => result.WithoutGauge.IsEmpty
        ? []
        : [new ReportParagraph($"Without gauge and length, so not judged: {string.Join(", ", result.WithoutGauge)}.")];

    /// <summary>Of the scenario's assumptions, those about the wires that were judged.</summary>
    private static IEnumerable<Assumption> OfWires(Scenario scenario, WiringResult result) => scenario.Assumptions.Where(assumption =>
        result.Rows.Any(row => string.Equals(row.Part, assumption.Part, StringComparison.Ordinal)) && assumption.Text.Contains("conductor at", StringComparison.Ordinal));

    private static ReportCell Judged(WiringVerdict verdict) => new(Wording.Of(verdict).ToUpperInvariant(), verdict switch
    {
        WiringVerdict.Pass => CellTone.Good,
        WiringVerdict.Fail => CellTone.Bad,
        _ => CellTone.Plain,
    });
}
