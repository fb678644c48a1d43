using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Studies.FailureCases;
using Endurance.Studies.Reconciliation;

namespace Endurance.Reports;

/// <summary>A filled card beside its predictions, for people.</summary>
public static class ReconciliationReport
{
    /// <summary>Everything.</summary>
    public static ReportDocument Describe(ReconciliationResult result) => Document(result, Readings("In tolerance", result, ReadingVerdict.InTolerance));

    /// <summary>Without the readings in tolerance, which would push the rest off a screen.</summary>
    public static ReportDocument DescribeForScreen(ReconciliationResult result) => Document(result, []);

    private static ReportDocument Document(ReconciliationResult result, ImmutableArray<ReportBlock> inTolerance) => new(
        $"Measured on the ground: {result.Scenario.Title}",
        [
            Minutes(result),
            new ReportParagraph(Counts(result)),
            .. FindingBlocks.Of(result.Findings),
            .. Readings("Out of tolerance", result, ReadingVerdict.OutOfTolerance),
            .. Loads(result),
            .. inTolerance,
            .. NotMeasured(result),
            .. StudyBlocks.Closing,
        ]);

    private static ReportTable Minutes(ReconciliationResult result) => new(
        "Minutes before and with the measured loads",
        [new("failure case"), new("what counts"), new("before", "min"), new("after", "min"), new("change", "min"), new("verdict before"), new("verdict after")],
        [.. result.Before.Zip(result.After).SelectMany(pair => Rows(result.Scenario.Horizon, pair.First, pair.Second))]);

    private static IEnumerable<ImmutableArray<ReportCell>> Rows(Duration horizon, CaseResult before, CaseResult after)
    {
        yield return StudyBlocks.Row(
            before.Name, First(before, after), CellText.MinutesWithin(before.Endurance, horizon, before.BreakOff), CellText.MinutesWithin(after.Endurance, horizon, after.BreakOff),
            Change(before, before.Endurance, after, after.Endurance), CellText.Judged(before), CellText.Judged(after));
        foreach (var (was, now) in before.Requirements.Zip(after.Requirements))
        {
            yield return StudyBlocks.Row(
                "", $"{SummaryTable.Subject(was.Requirement)} {CellText.RoundMinutes(was.Requirement.Endure)} min",
                CellText.MinutesWithin(was.Endurance, horizon, before.BreakOff), CellText.MinutesWithin(now.Endurance, horizon, after.BreakOff),
                Change(before, was.Endurance, after, now.Endurance), CellText.Judged(was.Verdict, before.BreakOff), CellText.Judged(now.Verdict, after.BreakOff));
        }
    }

    private static string First(CaseResult before, CaseResult after)
    {
        var (was, now) = (CellText.LostFirst(before.LimitedBy, before.Endurance, before.BreakOff), CellText.LostFirst(after.LimitedBy, after.Endurance, after.BreakOff));
        return string.Equals(was, now, StringComparison.Ordinal) ? $"first loss: {was}" : $"first loss: {was}, then {now}";
    }

    private static string Change(CaseResult one, Duration? before, CaseResult other, Duration? after) =>
        one.BreakOff is not null || other.BreakOff is not null ? CellText.NotKnown
        : before is { } was && after is { } now ? Signed((now - was).Minutes, 1) : before is null == after is null ? Signed(0, 1) : CellText.Absent;

    private static string Counts(ReconciliationResult result)
    {
        var (good, off) = (result.Count(ReadingVerdict.InTolerance), result.Count(ReadingVerdict.OutOfTolerance));
        return FormattableString.Invariant($"{good + off} of {result.Readings.Length} readings were taken: {good} in tolerance, {off} out of tolerance. ")
            + FormattableString.Invariant($"{result.Loads.Length} of {result.Scenario.Loads.Length} loads were measured alone and count as measured in the column after; everything else is as the scenario has it, so a fault that the card shows is not in these minutes.");
    }

    private static ImmutableArray<ReportBlock> Readings(string title, ReconciliationResult result, ReadingVerdict verdict)
    {
        var rows = result.Readings.Where(reading => reading.Verdict == verdict).Select(Row).ToImmutableArray();
        return rows.IsEmpty
            ? []
            : [new ReportTable(title, [new("point"), new("quantity"), new("unit"), new("predicted"), new("tolerance"), new("measured"), new("deviation"), new("verdict")], rows)];
    }

    private static ImmutableArray<ReportCell> Row(ComparedReading reading) => StudyBlocks.Row(
        TestCardReport.Label(reading.Point),
        Wording.Of(reading.Expected),
        reading.Expected.Unit,
        RoundedNumber.Fixed(reading.Expected.Predicted, 2),
        RoundedNumber.Fixed(reading.Expected.Tolerance, 2),
        RoundedNumber.Fixed(reading.Measured!.Value, 2),
        Signed(reading.Deviation!.Value, 2),
        new ReportCell(Wording.Of(reading.Verdict), reading.Verdict == ReadingVerdict.OutOfTolerance ? CellTone.Bad : CellTone.Good));

    private static ImmutableArray<ReportBlock> Loads(ReconciliationResult result) => result.Loads.IsEmpty
        ? []
        :
        [
            new ReportTable(
                "Loads as measured",
                [new("load"), new("point"), new("predicted", "A"), new("measured", "A"), new("change", "%"), new("before"), new("after"), new("measured on")],
                [.. result.Loads.Select(load => StudyBlocks.Row(
                    load.Drawn.Name,
                    FormattableString.Invariant($"T{load.Point}"),
                    RoundedNumber.Fixed(load.Predicted, 2),
                    RoundedNumber.Fixed(load.Amperes, 2),
                    load.IsAsDrawn ? "0.0" : Signed(((load.Amperes / load.Predicted) - 1) * 100, 1),
                    DemandText.Value(load.Drawn.Demand),
                    DemandText.Value(load.Measured.Demand),
                    load.Measured.MeasuredOn is { } date ? CellText.Date(date) : "no date"))]),
        ];

    private static ImmutableArray<ReportBlock> NotMeasured(ReconciliationResult result)
    {
        var open = result.Readings.Where(reading => reading.Verdict == ReadingVerdict.NotMeasured).ToList();
        return open.Count == 0
            ? []
            : [new ReportParagraph($"Not measured: {string.Join(", ", open.Select(reading => TestCardReport.Label(reading.Point)).Distinct(StringComparer.Ordinal))}. Where only some readings of a point are missing, its others count.")];
    }

    private static string Signed(double value, int decimals)
    {
        var text = RoundedNumber.Fixed(value, decimals);
        return value > 0 && text.Any(letter => letter is >= '1' and <= '9') ? "+" + text : text;
    }
}
