using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.LoadAnalysis;
using static Endurance.Reports.StudyBlocks;

namespace Endurance.Reports;

/// <summary>The load analysis for people.</summary>
public static class LoadAnalysisReport
{
    public static ReportDocument Describe(Scenario scenario, LoadAnalysisResult result) => new(
        scenario.Title, [.. Body(scenario, result), .. FindingBlocks.Of(result.Findings)]);

    /// <summary>Without the findings.</summary>
    internal static ImmutableArray<ReportBlock> Body(Scenario scenario, LoadAnalysisResult result) =>
    [
        Items(scenario, result),
        Totals(result),
        .. Converted(scenario, result),
        .. Shares(result),
        .. AmpMinutes(scenario, result),
    ];

    private static ReportTable Items(Scenario scenario, LoadAnalysisResult result)
    {
        var isOneVoltage = result.Items.All(item => item.Nominal == scenario.NominalVoltage);
        return new(
            isOneVoltage ? $"Loads at {Volts(scenario.NominalVoltage)} V" : "Loads at the voltage of their bus",
            [
                new("load"), new("bus"), .. isOneVoltage ? (ReadOnlySpan<ReportColumn>)[] : [new("nominal", "V")], new("phase"), new("as drawn"), new("kind"),
                new("draw", "A"), new("duty", "%"), new("mean", "A"), new("peak", "A"), new("number from"),
            ],
            [.. result.Items.Select(item => Row(
            [
                item.Name,
                item.Bus,
                .. isOneVoltage ? (ReadOnlySpan<ReportCell>)[] : [Volts(item.Nominal)],
                item.Phase ?? "every",
                item.IsOn ? "on" : "off",
                Kind(item),
                CellText.Amperes(item.Draw),
                CellText.Percent(item.Duty),
                CellText.Amperes(item.Mean),
                CellText.Amperes(item.Peak),
                From(item),
            ]))]);
    }

    private static string Volts(Voltage nominal) => RoundedNumber.Short(nominal.Volts, 1);

    private static ImmutableArray<ReportBlock> Converted(Scenario scenario, LoadAnalysisResult result) => result.Items.All(item => item.AtSystem == 1) ? [] :
    [
        new ReportParagraph($"Where buses are added up, a load behind a converter counts with what the converter takes for it at {Volts(scenario.NominalVoltage)} V, losses included."),
    ];

    private static ReportTable Totals(LoadAnalysisResult result) => new(
        "By phase of flight and bus",
        [new("phase"), new("bus"), new("continuous", "A"), new("intermittent", "A"), new("mean", "A"), new("all peaks at once", "A")],
        [.. result.Totals.Select(total => Row(
            total.Phase ?? "every",
            total.Bus ?? "all together",
            CellText.Amperes(total.Continuous),
            CellText.Amperes(total.Intermittent),
            CellText.Amperes(total.Mean),
            CellText.Amperes(total.Peak)))]);

    private static ImmutableArray<ReportBlock> Shares(LoadAnalysisResult result)
    {
        if (result.Shares.IsEmpty)
            return [];
        return
        [
            new ReportTable(
                "Share of the alternator",
                [new("alternator"), new("phase"), new("rated", "A"), new("mean load", "A"), new("share", "%"), new("limit", "%"), new("verdict")],
                [.. result.Shares.Select(share => Row(
                    string.Join(" + ", share.Alternators),
                    share.Phase ?? "every",
                    CellText.Amperes(share.Rated),
                    CellText.Amperes(share.Load.Mean),
                    CellText.Percent(share.Fraction),
                    RoundedNumber.Short(AlternatorShare.Limit * 100, 0),
                    share.IsWithin ? new ReportCell("PASS", CellTone.Good) : new ReportCell("FAIL", CellTone.Bad)))]),
            new ReportParagraph($"The mean counts intermittent loads by their duty. Charging a battery comes on top. The limit is that of {AlternatorShare.Source}, where neither placard nor monitor is fitted."),
        ];
    }

    private static ImmutableArray<ReportBlock> AmpMinutes(Scenario scenario, LoadAnalysisResult result)
    {
        if (result.AmpMinutes.IsEmpty)
            return [];
        return
        [
            new ReportTable(
                "Amp-minutes beside the simulation",
                [
                    new("failure case"), new("usable", "Ah"), new("before", "A"), new("for", "min"), new("landing", "A"), new("for", "min"),
                    new("cruise", "A"), new("for", "min"), new("form says", "min"), new("simulated", "min"),
                ],
                [.. result.AmpMinutes.Select(compared => Row(
                    compared.Case,
                    RoundedNumber.Fixed(compared.Form.Usable.AmpereHours, 2),
                    CellText.Amperes(compared.Form.Before),
                    CellText.Minutes(compared.Form.TimeBefore),
                    CellText.Amperes(compared.Form.Landing),
                    CellText.Minutes(compared.Form.TimeLanding),
                    CellText.Amperes(compared.Form.Shed),
                    CellText.MinutesOr(compared.Form.Cruise, "none left"),
                    CellText.MinutesOr(compared.Form.Total, "none left"),
                    Simulated(compared, scenario.Horizon)))]),
            .. result.AmpMinutes.Select(compared => new ReportList($"Why they differ in {compared.Case}", compared.Why)),
        ];
    }

    private static string Simulated(AmpMinuteComparison compared, Duration horizon) =>
        CellText.MinutesWithin(compared.Simulated, horizon, compared.BreakOff) + (compared.IsNeverCovered ? ", no landing" : "");

    internal static string Kind(LoadItem item) => item.IsIntermittent ? "intermittent" : "continuous";

    private static string From(LoadItem item)
    {
        if (item.Kind != LoadItemKind.Load)
            return "the " + (item.Kind == LoadItemKind.Coil ? "feed" : "alternator");
        var basis = item.Basis is { } said ? Wording.Of(said) : "not said";
        return item.MeasuredOn is { } date ? $"{basis} {CellText.Date(date)}" : basis;
    }
}
