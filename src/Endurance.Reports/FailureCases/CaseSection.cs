using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using static Endurance.Reports.StudyBlocks;

namespace Endurance.Reports;

/// <summary>One failure case in detail.</summary>
internal static class CaseSection
{
    /// <summary>Less reverse charge than this in a whole run is leakage, not a fault to act on.</summary>
    private static readonly Charge NotableReverseCharge = Charge.FromAmpereHours(0.001);

    public static ImmutableArray<ReportBlock> Blocks(Scenario scenario, CaseResult result) =>
    [
        new ReportHeading($"Case {result.Name}"),
        .. Detail(scenario, result),
        .. FindingBlocks.Of(result.Findings),
    ];

    /// <summary>Without its heading and its findings.</summary>
    public static ImmutableArray<ReportBlock> Detail(Scenario scenario, CaseResult result) =>
    [
        Events(result),
        .. BothModels(scenario, result),
        .. Requirements(scenario.Horizon, result),
        .. Landing(scenario.Horizon, result),
        Loads(scenario, result),
        .. result.Run.HasBegun ? [Buses(scenario.Horizon, result), Batteries(scenario.Horizon, result), .. Feeds(result)] : ImmutableArray<ReportBlock>.Empty,
    ];

    private static ReportTable Events(CaseResult result) => new(
        "What happens",
        [new("at", "min"), new("event")],
        [.. ToldEvent.Of(result.Run.Events).SelectMany(EventRows)]);

    private static IEnumerable<ImmutableArray<ReportCell>> EventRows(ToldEvent told)
    {
        yield return Row(CellText.Minutes(told.Event.Time), told.Event.What);
        if (told.More > 0)
            yield return Row("", $"(the same {RoundedNumber.Short(told.More, 0)} times more, the last at {CellText.Minutes(told.Last)} min)");
    }

    /// <summary>Both answers, where a battery's current changes so much that the capacity models differ.</summary>
    private static ImmutableArray<ReportBlock> BothModels(Scenario scenario, CaseResult result)
    {
        if (result.Kinetic is not { } kinetic || result.Peukert is not { } peukert)
            return [];
        var isKinetic = scenario.Batteries.Any(battery => battery.CapacityModel == CapacityModel.Kinetic);
        return
        [
            new ReportParagraph(
                $"The current of a battery changes by more than 2:1, and capacity models differ then. Peukert sum: {Words(peukert)}. "
                + $"Kinetic model, with recovery when the current falls: {Words(kinetic)}. "
                + $"Neither bounds the other; the tables show the {(isKinetic ? "kinetic model" : "Peukert sum")}."),
        ];

        string Words(ModelAnswer answer) => $"{answer.LimitedBy ?? "nothing"} lost first, after {CellText.MinutesWithin(answer.Endurance, scenario.Horizon)} min";
    }

    private static ImmutableArray<ReportBlock> Requirements(Duration horizon, CaseResult result)
    {
        if (result.Requirements.IsEmpty)
            return [];
        return
        [
            new ReportTable(
                "Requirements",
                [new("must last"), new("required", "min"), new("lasts", "min"), new("margin", "min"), new("limited by"), new("verdict")],
                [.. result.Requirements.Select(judged => Row(
                    SummaryTable.Subject(judged.Requirement) + (judged.Requirement.DipsAllowed ? " (dips allowed)" : ""),
                    CellText.RoundMinutes(judged.Requirement.Endure),
                    CellText.MinutesWithin(judged.Endurance, horizon, result.BreakOff),
                    CellText.Margin(result, judged, horizon),
                    CellText.LostFirst(judged.LimitedBy, judged.Endurance, result.BreakOff),
                    CellText.Judged(judged.Verdict, result.BreakOff)))]),
        ];
    }

    private static ImmutableArray<ReportBlock> Landing(Duration horizon, CaseResult result)
    {
        if (result.LandingReserve is not { } reserve)
            return [];
        var latest = reserve.IsEverCovered ? CellText.MinutesWithin(reserve.Latest, horizon - reserve.Landing.Lasts) : "too late at zero";
        return
        [
            new ReportTable(
                "Landing",
                [new("switched on for the approach"), new("approach lasts", "min"), new("begin it by", "min")],
                [Row(string.Join(", ", reserve.Landing.Connect), CellText.RoundMinutes(reserve.Landing.Lasts), new ReportCell(latest, reserve.IsEverCovered ? CellTone.Plain : CellTone.Bad))]),
        ];
    }

    private static ReportTable Loads(Scenario scenario, CaseResult result)
    {
        var loads = scenario.Loads.ToDictionary(load => load.Name, StringComparer.Ordinal);
        return new ReportTable(
            "Loads",
            [new("load"), new("essential"), new("bus"), new("first lost", "min"), new("lost for good", "min"), new("why"), new("switched off", "min")],
            [.. result.Run.Loads.Select(outcome => Row(
                outcome.Name,
                loads[outcome.Name].IsEssential ? "yes" : "",
                loads[outcome.Name].Bus,
                outcome.WasConnected ? LossOf(outcome, outcome.TimePowered, scenario.Horizon, result.BreakOff) : "not on",
                outcome.WasConnected ? LossOf(outcome, outcome.TimeLostForGood, scenario.Horizon, result.BreakOff) : "not on",
                outcome.LostBecause is { } reason ? Wording.Of(reason) : CellText.Absent,
                CellText.MinutesOr(outcome.TimeShed, CellText.Absent)))]);
    }

    /// <summary>A load that was switched off before it could be lost has no "more than".</summary>
    private static string LossOf(LoadOutcome outcome, Duration? lost, Duration horizon, BreakOff? breakOff) =>
        lost is null && outcome.TimeShed is not null ? CellText.Absent : CellText.MinutesWithin(lost, horizon, breakOff);

    private static ReportTable Buses(Duration horizon, CaseResult result) => new(
        "Buses",
        [new("bus"), new("start", "V"), new("lowest", "V"), new("cutoff", "V"), new("below cutoff", "min"), new("for good", "min")],
        [.. result.Run.Buses.Select(bus => Row(
            bus.Name,
            CellText.Volts(bus.StartVoltage),
            CellText.Volts(bus.LowestVoltage),
            bus.Cutoff is { } cutoff ? CellText.Volts(cutoff) : CellText.Absent,
            bus.Cutoff is null ? CellText.Absent : CellText.MinutesWithin(bus.TimeToCutoff, horizon, result.BreakOff),
            bus.Cutoff is null ? CellText.Absent : CellText.MinutesWithin(bus.TimeToCutoffForGood, horizon, result.BreakOff)))]);

    private static ReportTable Batteries(Duration horizon, CaseResult result) => new(
        "Batteries",
        [
            new("battery"), new("charge at start", "%"), new("at end", "%"), new("start", "A"), new("highest", "A"),
            new("charging", "A"), new("out", "Ah"), new("out", "Wh"), new("in", "Ah"), new("exhausted", "min"),
        ],
        [.. result.Run.Batteries.Select(battery => Row(
            battery.Name,
            CellText.Percent(battery.ChargeStart),
            CellText.Percent(battery.ChargeEnd),
            CellText.Amperes(battery.StartCurrent),
            CellText.Amperes(battery.HighestCurrent),
            CellText.Amperes(-battery.LowestCurrent),
            RoundedNumber.Fixed(battery.Delivered.AmpereHours, 2),
            RoundedNumber.Fixed(battery.DeliveredEnergy.WattHours, 1),
            RoundedNumber.Fixed(battery.Received.AmpereHours, 2),
            CellText.MinutesWithin(battery.TimeToExhaustion, horizon, result.BreakOff)))]);

    private static ImmutableArray<ReportBlock> Feeds(CaseResult result)
    {
        var feeds = result.Run.Feeds;
        if (feeds.IsEmpty)
            return [];
        List<(ReportColumn Column, Func<FeedOutcome, string> Text)> columns =
        [
            (new("feed"), feed => feed.Name),
            (new("start", "A"), feed => CellText.Amperes(feed.StartCurrent)),
            (new("highest", "A"), feed => CellText.Amperes(feed.HighestCurrent)),
            (new("lowest", "A"), feed => CellText.Amperes(feed.LowestCurrent)),
        ];
        if (feeds.Any(feed => feed.HighestDiodePower is not null))
            columns.Add((new("diode heat", "W"), feed => feed.HighestDiodePower is { } heat ? RoundedNumber.Fixed(heat.Watts, 2) : CellText.Absent));
        if (feeds.Any(feed => feed.HighestJunction is not null))
            columns.Add((new("junction", "degC"), feed => feed.HighestJunction is { } junction ? RoundedNumber.Fixed(junction.Celsius, 1) : CellText.Absent));
        if (feeds.Any(feed => feed.ReverseCharge >= NotableReverseCharge))
            columns.Add((new("backwards", "Ah"), feed => RoundedNumber.Fixed(feed.ReverseCharge.AmpereHours, 3)));
        return
        [
            new ReportTable(
                "Feeds",
                [.. columns.Select(column => column.Column)],
                [.. feeds.Select(feed => columns.Select(column => (ReportCell)column.Text(feed)).ToImmutableArray())]),
        ];
    }
}
