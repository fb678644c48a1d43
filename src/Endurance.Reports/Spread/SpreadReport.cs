using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.Spread;

namespace Endurance.Reports;

/// <summary>A spread for people.</summary>
public static class SpreadReport
{
    /// <summary>Minutes and probabilities of each case, what was varied, and what each tolerance alone does.</summary>
    public static ReportDocument Describe(SpreadResult result) => new(
        result.Scenario.Title,
        [
            Spread(result),
            new ReportParagraph("One sample in twenty falls short of P5, half of P50, nineteen in twenty of P95. \"More than\" means: not lost within the "
                + $"{CellText.RoundMinutes(result.Scenario.Horizon)} min simulated. {Drawn(result)} Tolerances of one group move together; all others are drawn independently of each other."),
            .. StudyBlocks.ListUnlessEmpty("Samples that could not be run to their end", BrokenOff(result)),
            Probabilities(result),
            new ReportParagraph("The interval (Wilson, 95 %) tells how well so many samples know the probability. It knows nothing of tolerances that are themselves wrong."),
            Tolerances(result),
            .. result.Cases.SelectMany((_, c) => Sensitivity(result, c)),
            .. StudyBlocks.Closing,
        ]);

    private static string Drawn(SpreadResult result) =>
        $"{RoundedNumber.Short(result.Options.Samples, 0)} samples, a Latin hypercube with seed {RoundedNumber.Short(result.Options.Seed, 0)}: the same seed gives the same numbers.";

    /// <summary>Samples that could not be computed to their end are counted, never left out.</summary>
    private static ImmutableArray<string> BrokenOff(SpreadResult result) =>
    [
        .. result.Cases.SelectMany(one => one.BreakOffs.Select(samples =>
            $"{one.Name}: {RoundedNumber.Short(samples.Count, 0)} of {RoundedNumber.Short(result.Options.Samples, 0)}; the minutes of these samples end there, and they meet no requirement. In the first, {samples.First.Told("")}")),
    ];

    private static ReportTable Spread(SpreadResult result) => new(
        "Endurance by failure case, within the tolerances",
        [new("failure case"), new("P5", "min"), new("P50", "min"), new("P95", "min"), new("as written", "min"), new("least likely requirement"), new("met by", "%")],
        [.. result.Cases.Zip(result.AsWritten, (one, written) =>
        {
            var worst = one.Requirements.MinBy(judged => judged.Share);
            return StudyBlocks.Row(
                one.Name,
                Quantile(result, one, 0.05),
                Quantile(result, one, 0.5),
                Quantile(result, one, 0.95),
                CellText.MinutesWithin(written.Endurance, result.Scenario.Horizon, written.BreakOff),
                worst is null ? "none asked" : Asked(worst.Requirement),
                worst is null ? CellText.Absent : Share(worst, result.Options.Samples));
        })]);

    private static ReportTable Probabilities(SpreadResult result) => new(
        "Probability that each requirement is met",
        [new("failure case"), new("requirement"), new("samples that meet it"), new("probability", "%"), new("from", "%"), new("to", "%")],
        [.. result.Cases.SelectMany(one => one.Requirements.Select(judged => StudyBlocks.Row(
            one.Name,
            Asked(judged.Requirement),
            $"{RoundedNumber.Short(judged.Met, 0)} of {RoundedNumber.Short(result.Options.Samples, 0)}",
            Share(judged, result.Options.Samples),
            RoundedNumber.Fixed(judged.Interval.Low * 100, 2),
            RoundedNumber.Fixed(judged.Interval.High * 100, 2))))]);

    private static ReportTable Tolerances(SpreadResult result) => new(
        "What was varied",
        [new("quantity"), new("distribution"), new("5 % point"), new("95 % point"), new("as written"), new("moves with")],
        [.. result.Scenario.Tolerances.Select(tolerance =>
        {
            var kind = result.KindOf(tolerance.Quantity);
            var written = Studies.Adjustment.AdjustableQuantities.Find(result.Scenario, tolerance.Quantity)?.Get(result.Scenario);
            return StudyBlocks.Row(
                tolerance.Quantity,
                Shape(tolerance.Distribution),
                QuantityText.WithUnit(kind, tolerance.Distribution.Quantile(0.05)),
                QuantityText.WithUnit(kind, tolerance.Distribution.Quantile(0.95)),
                written is { } value ? QuantityText.WithUnit(kind, value) : CellText.Absent,
                tolerance.Group is { } group ? $"group {group}" : CellText.Absent);
        })]);

    private static IEnumerable<ReportBlock> Sensitivity(SpreadResult result, int caseIndex)
    {
        if (result.Sensitivity.IsEmpty)
            return [];
        return
        [
            new ReportTable(
                $"Each tolerance alone, largest effect first: {result.Cases[caseIndex].Name}",
                [new("quantity"), new("low"), new("gives", "min"), new("high"), new("gives", "min"), new("change", "min")],
                [.. result.Ranked(caseIndex).Select(row => StudyBlocks.Row(
                    SpreadResult.Words(row),
                    QuantityText.WithUnit(result.KindOf(row), row.Low.Value),
                    CellText.MinutesWithin(row.Low.Cases[caseIndex].Endurance, result.Scenario.Horizon, row.Low.Cases[caseIndex].BreakOff),
                    QuantityText.WithUnit(result.KindOf(row), row.High.Value),
                    CellText.MinutesWithin(row.High.Cases[caseIndex].Endurance, result.Scenario.Horizon, row.High.Cases[caseIndex].BreakOff),
                    RoundedNumber.Fixed(Math.Abs(result.MinutesOf(row.High, caseIndex) - result.MinutesOf(row.Low, caseIndex)), 1)))]),
            .. result.Sensitivity.Any(row => row.IsGroup) ? [new ReportParagraph("A group stands at the 5 % and the 95 % points of all its tolerances at once.")] : Array.Empty<ReportBlock>(),
        ];
    }

    private static string Quantile(SpreadResult result, SpreadCase one, double share) => CellText.MinutesWithin(one.Quantile(share), result.Scenario.Horizon);

    private static string Asked(Requirement requirement) => $"{SummaryTable.Subject(requirement)} {CellText.RoundMinutes(requirement.Endure)} min";

    /// <summary>Never 100 % or 0 % by rounding alone.</summary>
    private static string Share(SpreadRequirement judged, int samples) =>
        judged.Met == samples ? "100" : judged.Met == 0 ? "0" : RoundedNumber.Fixed(Math.Clamp(judged.Share * 100, 0.01, 99.99), 2);

    private static string Shape(Distribution distribution) => distribution switch
    {
        Uniform => "uniform",
        Triangular => "triangular",
        Normal => "normal",
        _ => throw new ArgumentException("Unknown distribution.", nameof(distribution)),
    };
}
