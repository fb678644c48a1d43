using System.Collections.Immutable;
using Endurance.Studies.GroundTest;

namespace Endurance.Reports;

/// <summary>A ground test for people with a pencil.</summary>
public static class TestCardReport
{
    public static ReportDocument Describe(GroundTestPlan plan) => new(
        $"Ground test: {plan.Title}",
        [
            new ReportHeading("Objective"),
            new ReportParagraph(plan.Objective),
            new ReportHeading("Conditions and limits"),
            new ReportList("", plan.Conditions),
            new ReportHeading("Safety"),
            new ReportList("", plan.Safety),
            new ReportHeading("Build-up"),
            new ReportList("", plan.BuildUp),
            new ReportList("When the timed run ends", plan.StopRule),
            .. StudyBlocks.ListUnlessEmpty("Not on this card, because it cannot be predicted", [.. plan.LeftOut.Select(one => one.Told)]),
            new ReportTable("Written by", [new("date"), new("place"), new("at the master"), new("at the meters"), new("ambient", "degC")], [["", "", "", "", ""]]),
            .. plan.Points.GroupBy(point => point.Group).SelectMany(Section),
        ]);

    private static IEnumerable<ReportBlock> Section(IGrouping<TestGroup, TestPoint> points) =>
        points.SelectMany(Point).Prepend(new ReportHeading(Wording.Of(points.Key)));

    private static IEnumerable<ReportBlock> Point(TestPoint point)
    {
        yield return new ReportList($"{Label(point)}. {point.Title}", [.. point.Configuration, .. Aborted(point)]);
        yield return new ReportTable(
            "",
            [new("quantity"), new("unit"), new("predicted"), new("tolerance"), new("measured"), new("remarks")],
            [.. point.Readings.Select(Row)]);
        foreach (var remark in point.Remarks)
            yield return new ReportParagraph(remark);
    }

    private static ImmutableArray<ReportCell> Row(ExpectedReading reading) =>
        [Wording.Of(reading), reading.Unit, RoundedNumber.Fixed(reading.Predicted, 2), RoundedNumber.Fixed(reading.Tolerance, 2), "", ""];

    private static IEnumerable<string> Aborted(TestPoint point) =>
        point.Abort.IsEmpty ? [] : [$"Abort: {string.Join("; ", point.Abort)}."];

    /// <summary>As on every form of the card.</summary>
    internal static string Label(TestPoint point) => $"T{point.Number}";
}
