using System.Collections.Immutable;

namespace Endurance.Reports.Html;

/// <summary>How much of each thing may go before a requirement fails.</summary>
internal static class MarginBlocks
{
    /// <summary>Limits come from a coarser solver, so they are shown to a tenth.</summary>
    private const int Decimals = 1;

    public static ImmutableArray<ReportBlock> Of(ReviewFacts facts)
    {
        if (facts.Margins.IsEmpty)
            return [new ReportParagraph("The scenario has no requirement, so there is no limit to look for.")];
        return
        [
            new ReportParagraph(
                "Each is varied on its own, everything else as written, until some requirement of some failure case fails. A battery of another capacity is assumed to have a resistance that falls as 1/capacity, and the same health, temperature and shape of discharge; a lower health takes capacity in proportion and raises a resistance from the library as 1/health, while one that was typed stays."),
            new ReportTable(
                "Limits at which every requirement is still met",
                [new("varied"), new("now"), new("limit"), new("to spare"), new("case that decides"), new("remark")],
                [.. facts.Margins.Select(Row)]),
        ];
    }

    private static ImmutableArray<ReportCell> Row(SizingMargin margin)
    {
        var terms = SizingTerms.Of(margin.Find);
        var now = $"{RoundedNumber.Short(terms.InUnit(margin.Now), 2)} {terms.Unit}";
        var subject = terms.Noun + (margin.Subject.Length > 0 ? " of " + margin.Subject : "");
        if (margin.Result.Limit is not { } limit)
            return [subject, now, new ReportCell("none found", CellTone.Bad), CellText.Absent, CellText.Absent, "no value tried meets every requirement"];
        var beyond = !margin.Result.IsBeyondRange ? "" : terms.IsSmallest ? " or less" : " or more";
        return
        [
            subject,
            now,
            terms.SafeWithUnit(limit, Decimals) + beyond,
            Spare(margin, terms, limit),
            margin.Result.AtLimit is { LimitedBy: not null } at ? at.Case : CellText.Absent,
            margin.Result.IsNotMonotonic ? "further on it passes or fails again: take the limit with care" : CellText.Absent,
        ];
    }

    /// <summary>Rounded down, so that what is printed is there.</summary>
    private static ReportCell Spare(SizingMargin margin, SizingTerms terms, double limit)
    {
        var spare = terms.InUnit(terms.IsSmallest ? margin.Now - limit : limit - margin.Now);
        var tenths = Math.Floor(Math.Round(Math.Abs(spare) * 10, 6)) / 10;
        if (spare < 0)
            return new ReportCell(tenths > 0 ? $"short by {RoundedNumber.Fixed(tenths, Decimals)} {terms.Unit}" : $"short by less than 0.1 {terms.Unit}", CellTone.Bad);
        var more = margin.Result.IsBeyondRange ? "at least " : "";
        return new ReportCell($"{more}{RoundedNumber.Fixed(tenths, Decimals)} {terms.Unit}", CellTone.Good);
    }
}
