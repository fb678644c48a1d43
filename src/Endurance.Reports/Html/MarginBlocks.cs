using System.Collections.Immutable;

namespace Endurance.Reports.Html;

/// <summary>How much of each thing may go before a requirement fails.</summary>
internal static class MarginBlocks
{
    public static ImmutableArray<ReportBlock> Of(ReviewFacts facts)
    {
        if (facts.Margins.IsEmpty)
            return [new ReportParagraph("The scenario has no requirement, so there is no limit to look for.")];
        return
        [
            new ReportParagraph("Each is varied on its own, everything else as written, until some requirement of some failure case fails."),
            new ReportTable(
                "Limits at which every requirement is still met",
                [new("varied"), new("now"), new("limit"), new("remark")],
                [.. facts.Margins.Select(margin => ImmutableArray.Create<ReportCell>(
                    [margin.Subject, Shown(margin, margin.Now), Limit(margin), Remark(margin)]))]),
        ];
    }

    private static ReportCell Limit(SizingMargin margin) => margin.Result.Limit is { } limit
        ? new ReportCell((margin.Result.IsBeyondRange ? "beyond " : "") + Shown(margin, limit * margin.Scale))
        : new ReportCell("none found", CellTone.Bad);

    private static string Remark(SizingMargin margin)
    {
        if (margin.Result.Limit is null)
            return "no value tried meets every requirement";
        return margin.Result.IsNotMonotonic ? "further on it passes or fails again: take the limit with care" : CellText.Absent;
    }

    private static string Shown(SizingMargin margin, double value) => $"{RoundedNumber.Fixed(value, 1)} {margin.Unit}";
}
