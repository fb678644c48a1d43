using System.Collections.Immutable;
using Endurance.Studies.LayoutComparison;

namespace Endurance.Reports;

/// <summary>Layouts side by side, for people: first one row a layout, then one row a layout and case.</summary>
public static class LayoutReport
{
    private static readonly ImmutableArray<ReportColumn> Summary =
    [
        new("layout"),
        new("shortest case"),
        new("lost at", "min"),
        new("parts"),
        new("single failures survived"),
        new("findings"),
        new("verdict"),
    ];

    private static readonly ImmutableArray<ReportColumn> Detail =
    [
        new("layout"),
        new("lost first"),
        new("lost at", "min"),
        new("start", "V"),
        new("before loss", "V"),
        new("diode", "W"),
        new("junction", "degC"),
        new("findings"),
        new("verdict"),
    ];

    /// <param name="layouts">At least one.</param>
    public static ReportDocument Describe(ImmutableArray<LayoutResult> layouts) => new(
        layouts[0].Scenario.Title,
        [
            new ReportTable("Layouts side by side", Summary, [.. layouts.Select(SummaryRow)]),
            .. layouts.Skip(1).Select(layout => NotAlike(layouts[0], layout)).OfType<ReportBlock>(),
            .. CaseNames(layouts).Select(name => CaseTable(layouts, name)),
            new ReportParagraph(
                "Start and before loss are volts at the essential bus, the one most essential loads sit on: after all steps at zero, and one minute before the first loss, or at the end of the run when nothing is lost. Diode and junction are the worst instant of any diode in a feed; a junction is known only where the diode has a heat path."),
            new ReportParagraph(
                "A single failure is one part failed in one way, on its own and in each failure case; it is survived when every requirement is still met. Parts are sources, chargers, selectors, warnings, and each diode, contact, breaker, fuse, resistor and shunt; wires, buses and loads do not count."),
        ]);

    private static ReportParagraph? NotAlike(LayoutResult first, LayoutResult other) => LayoutBasis.Differences(first.Scenario, other.Scenario) is { IsEmpty: false } differences
        ? new ReportParagraph($"Not like for like: {other.Name} has {string.Join(", ", differences)} than {first.Name}, so its minutes and failures survived answer another question.")
        : null;

    private static IEnumerable<string> CaseNames(ImmutableArray<LayoutResult> layouts) =>
        layouts.SelectMany(layout => layout.Cases).Select(one => one.Result.Name).Distinct(StringComparer.Ordinal);

    private static ImmutableArray<ReportCell> SummaryRow(LayoutResult layout)
    {
        var shortest = layout.Cases.MinBy(one => one.Result.Endurance?.Seconds ?? double.PositiveInfinity)!;
        return
        [
            layout.Name,
            shortest.Result.Name,
            CellText.MinutesWithin(shortest.Result.Endurance, layout.Scenario.Horizon, shortest.Result.BreakOff),
            RoundedNumber.Short(layout.Parts, 0),
            $"{RoundedNumber.Short(layout.FailuresSurvived, 0)} of {RoundedNumber.Short(layout.FailuresTried, 0)}",
            RoundedNumber.Short(layout.Findings, 0),
            CellText.Judged(layout.Verdict),
        ];
    }

    private static ReportTable CaseTable(ImmutableArray<LayoutResult> layouts, string name) => new(name, Detail,
        [.. layouts.SelectMany(layout => layout.Cases.Where(one => string.Equals(one.Result.Name, name, StringComparison.Ordinal)).Select(one => CaseRow(layout, one)))]);

    private static ImmutableArray<ReportCell> CaseRow(LayoutResult layout, LayoutCase one) =>
    [
        layout.Name,
        CellText.LostFirst(one.Result.LimitedBy, one.Result.Endurance, one.Result.BreakOff),
        CellText.MinutesWithin(one.Result.Endurance, layout.Scenario.Horizon, one.Result.BreakOff),
        one.StartVoltage is { } start ? CellText.Volts(start) : CellText.Absent,
        one.EndVoltage is { } end ? CellText.Volts(end) : CellText.Absent,
        one.HighestDiodePower is { } power ? RoundedNumber.Fixed(power.Watts, 2) : CellText.Absent,
        one.HighestJunction is { } junction ? RoundedNumber.Fixed(junction.Celsius, 0) : CellText.Absent,
        RoundedNumber.Short(one.Result.Findings.Length, 0),
        CellText.Judged(one.Result),
    ];
}
