using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Findings;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;

namespace Endurance.Tests.Reports;

/// <summary>An invented aircraft and three invented results: one passes, one fails, one outlasts the horizon.</summary>
internal static class ReportFixture
{
    private static readonly Requirement EssentialHalfHour = new() { Loads = ["primary_display", "com_receive", "ignition_two"], LoadsLabel = "essential", Endure = Duration.FromMinutes(30) };
    private static readonly Requirement IgnitionThreeQuarters = new() { Case = "engine_out", Loads = ["ignition_two"], Endure = Duration.FromMinutes(45), DipsAllowed = true };

    public static Scenario Scenario { get; } = new()
    {
        Title = "Lake-survey floatplane",
        System = SystemVoltage.Volts14,
        Ambient = Temperature.FromCelsius(10),
        Horizon = Duration.FromHours(4),
        Buses =
        [
            new Bus { Name = "main_bus" },
            new Bus { Name = "essential_bus", Cutoff = Voltage.FromVolts(11) },
            new Bus { Name = "ignition_bus", Cutoff = Voltage.FromVolts(9) },
        ],
        Batteries = [BatteryOn("ship_battery", "main_bus", 18), BatteryOn("backup_battery", "ignition_bus", 9)],
        Feeds =
        [
            new Feed { Name = "essential_normal", From = "main_bus", To = "essential_bus" },
            new Feed { Name = "ignition_feed", From = "ignition_bus", To = "essential_bus" },
        ],
        Loads =
        [
            LoadOn("primary_display", "essential_bus", isEssential: true),
            LoadOn("com_receive", "essential_bus", isEssential: true),
            LoadOn("ignition_two", "ignition_bus", isEssential: true),
            LoadOn("pitot_heat", "main_bus", isEssential: false),
            LoadOn("landing_light", "main_bus", isEssential: false) with { IsOn = false },
        ],
        FailureCases = [new FailureCase { Name = "alternator_failure" }, new FailureCase { Name = "engine_out" }, new FailureCase { Name = "normal" }],
        Requirements = [EssentialHalfHour, IgnitionThreeQuarters],
        Assumptions = [new Assumption("scenario", "horizon 240 min", Origin.Default, null), new Assumption("ship_battery", "charge at start 100 %", Origin.Default, null)],
    };

    public static ImmutableArray<CaseResult> Cases { get; } = [AlternatorFailure(), EngineOut(), Normal()];

    private static Battery BatteryOn(string name, string bus, double ampereHours) => new()
    {
        Name = name,
        Bus = bus,
        RatedCapacity = Charge.FromAmpereHours(ampereHours),
        Rate = Duration.FromHours(20),
        PeukertExponent = 1.15,
        Emf = PiecewiseLinear.FromPoints((0, 11), (1, 12.85)),
        Resistance = PiecewiseLinear.Constant(0.012),
        Temperature = Temperature.FromCelsius(10),
    };

    private static Load LoadOn(string name, string bus, bool isEssential) =>
        new() { Name = name, Bus = bus, Demand = new ConstantCurrent(Current.FromAmperes(2)), Minimum = Voltage.FromVolts(10), IsEssential = isEssential };

    private static CaseResult AlternatorFailure() => new()
    {
        Name = "alternator_failure",
        Verdict = Verdict.Pass,
        Endurance = Duration.FromMinutes(83.21404),
        AfterRecognition = Duration.FromMinutes(79.11404),
        LimitedBy = "primary_display",
        Requirements = [new RequirementResult { Requirement = EssentialHalfHour, Endurance = Duration.FromMinutes(83.21404), Verdict = Verdict.Pass, LimitedBy = "primary_display" }],
        Run = Run(
            83.21404,
            [
                Happened(0, EventKind.Step, "engine_alternator", "engine_alternator failed"),
                Happened(4.1, EventKind.Step, "pitot_heat", "pitot_heat shed"),
                Happened(83.21404, EventKind.BusBelowCutoff, "essential_bus", "essential_bus below cutoff 11 V"),
                Happened(83.21404, EventKind.LoadLost, "primary_display", "primary_display lost: below minimum"),
                Happened(83.21404, EventKind.LoadLost, "com_receive", "com_receive lost: below minimum"),
                Happened(121.5, EventKind.BatteryExhausted, "backup_battery", "backup_battery exhausted"),
                Happened(121.5, EventKind.End, "", "nothing is left"),
            ],
            recognition: 4.1,
            end: 121.5),
        Findings =
        [
            new Finding("feed-near-rating", Severity.Caution, "essential_normal", "5.6 A", "Carries 93 % of its protection."),
            new Finding("diode-hot", Severity.Warning, "ignition_feed", "131 degC", "Junction near its limit: improve the heat path."),
        ],
        Assumptions = [new Assumption("ship_battery", "charge at start 100 %", Origin.Default, null), new Assumption("ship_battery", "capacity factor 80 % at 10 degC", Origin.Library, "common practice, no source")],
    };

    private static CaseResult EngineOut() => new()
    {
        Name = "engine_out",
        Verdict = Verdict.Fail,
        Endurance = Duration.FromMinutes(29.98),
        AfterRecognition = null,
        LimitedBy = "ignition_two",
        Requirements =
        [
            new RequirementResult { Requirement = EssentialHalfHour, Endurance = Duration.FromMinutes(29.98), Verdict = Verdict.Fail, LimitedBy = "ignition_two" },
            new RequirementResult { Requirement = IgnitionThreeQuarters, Endurance = Duration.FromMinutes(121.5), Verdict = Verdict.Pass, LimitedBy = "ignition_two" },
        ],
        Run = Run(
            29.98,
            [
                Happened(0, EventKind.Step, "engine", "engine stopped"),
                Happened(29.98, EventKind.LoadLost, "ignition_two", "ignition_two lost: voltage collapse"),
                Happened(31.2, EventKind.LoadBack, "ignition_two", "ignition_two powered again"),
                Happened(121.5, EventKind.End, "", "nothing is left"),
            ],
            recognition: null,
            end: 121.5) with
        {
            Loads =
            [
                Lost("primary_display", 121.5, 121.5, LossReason.BusDead),
                Lost("com_receive", 121.5, 121.5, LossReason.BusDead),
                Lost("ignition_two", 29.98, 121.5, LossReason.VoltageCollapse),
                Lost("pitot_heat", 0, 0, LossReason.NeverFed),
                new LoadOutcome { Name = "landing_light", TimePowered = null, TimeLostForGood = null, LostBecause = null, TimeShed = null, WasConnected = false },
            ],
        },
        Findings = [],
        Assumptions = [],
    };

    private static CaseResult Normal() => new()
    {
        Name = "normal",
        Verdict = Verdict.Pass,
        Endurance = null,
        AfterRecognition = null,
        LimitedBy = null,
        Requirements = [new RequirementResult { Requirement = EssentialHalfHour, Endurance = null, Verdict = Verdict.Pass, LimitedBy = null }],
        Run = Run(null, [Happened(240, EventKind.End, "", "end of the time simulated")], recognition: null, end: 240),
        Findings = [],
        Assumptions = [],
    };

    private static SimulationResult Run(double? displayLost, ImmutableArray<TimedEvent> events, double? recognition, double end) => new()
    {
        Buses =
        [
            new BusOutcome { Name = "main_bus", Cutoff = null, TimeToCutoff = null, TimeToCutoffForGood = null, StartVoltage = Voltage.FromVolts(12.61), LowestVoltage = Voltage.FromVolts(displayLost is null ? 12.6 : 0) },
            new BusOutcome { Name = "essential_bus", Cutoff = Voltage.FromVolts(11), TimeToCutoff = Minutes(displayLost), TimeToCutoffForGood = Minutes(displayLost), StartVoltage = Voltage.FromVolts(12.40215), LowestVoltage = Voltage.FromVolts(displayLost is null ? 12.4 : 0) },
            new BusOutcome { Name = "ignition_bus", Cutoff = Voltage.FromVolts(9), TimeToCutoff = displayLost is null ? null : Duration.FromMinutes(121.5), TimeToCutoffForGood = displayLost is null ? null : Duration.FromMinutes(121.5), StartVoltage = Voltage.FromVolts(12.7), LowestVoltage = Voltage.FromVolts(-1e-12) },
        ],
        Loads =
        [
            Lost("primary_display", displayLost, displayLost, LossReason.BelowMinimum),
            Lost("com_receive", displayLost, displayLost, LossReason.BelowMinimum),
            Lost("ignition_two", displayLost is null ? null : 121.5, displayLost is null ? null : 121.5, LossReason.BusDead),
            new LoadOutcome { Name = "pitot_heat", TimePowered = null, TimeLostForGood = null, LostBecause = null, TimeShed = Minutes(recognition), WasConnected = true },
            new LoadOutcome { Name = "landing_light", TimePowered = null, TimeLostForGood = null, LostBecause = null, TimeShed = null, WasConnected = false },
        ],
        Batteries =
        [
            Drained("ship_battery", displayLost is null ? 1 : 0.031, displayLost is null ? 0 : 11.92, displayLost is null ? null : 91.4),
            Drained("backup_battery", displayLost is null ? 1 : 0, displayLost is null ? 0 : 7.5, displayLost is null ? null : 121.5),
        ],
        Feeds =
        [
            new FeedOutcome { Name = "essential_normal", StartCurrent = Current.FromAmperes(5.02), HighestCurrent = Current.FromAmperes(5.61), LowestCurrent = Current.FromAmperes(-0.4), HighestDiodePower = null, HighestJunction = null, ReverseCharge = Charge.FromAmpereHours(0.0125) },
            new FeedOutcome { Name = "ignition_feed", StartCurrent = Current.Zero, HighestCurrent = Current.FromAmperes(2.1234567), LowestCurrent = Current.FromAmperes(-0.00002), HighestDiodePower = Power.FromWatts(2.3), HighestJunction = Temperature.FromCelsius(41), ReverseCharge = Charge.Zero },
        ],
        Events = events,
        Findings = [],
        Recognition = Minutes(recognition),
        End = Duration.FromMinutes(end),
        EnergyResidual = 1e-9,
        Statistics = new SimulationStatistics(40, 2, 120, 300),
        Trace = TraceTo(displayLost, end),
    };

    /// <summary>A gently falling discharge sampled each ten minutes, with a jump where the display is lost.</summary>
    private static Trace TraceTo(double? lost, double end)
    {
        var minutes = Enumerable.Range(0, (int)(end / 10) + 1).Select(i => i * 10.0).Concat(lost is { } at ? [at, at, end, end] : [end]).Order().ToImmutableArray();
        ImmutableArray<double> Column(Func<double, double> before, double after)
        {
            var passed = 0;
            return [.. minutes.Select((t, i) => lost is { } at && (t > at || (t >= at && passed++ > 0)) && after >= 0 ? (i == minutes.Length - 1 ? 0 : after) : before(t))];
        }

        var slope = lost is null ? 0 : 1;
        return new Trace
        {
            Seconds = [.. minutes.Select(t => t * 60)],
            BusVolts =
            [
                new TraceColumn("main_bus", Column(t => 12.6 - (slope * 0.016 * t), 11.4)),
                new TraceColumn("essential_bus", Column(t => 12.4 - (slope * 0.0168 * t), 10.9)),
                new TraceColumn("ignition_bus", Column(t => 12.7 - (slope * 0.01 * t), 11.9)),
            ],
            BatteryAmperes = [new TraceColumn("ship_battery", Column(_ => slope * 7.31, 0.5)), new TraceColumn("backup_battery", Column(_ => slope * 1.6, 3.2))],
            BatteryCharge = [new TraceColumn("ship_battery", Column(t => 1 - (slope * 0.0079 * t), -1)), new TraceColumn("backup_battery", Column(t => 1 - (slope * 0.008 * t), -1))],
            FeedAmperes = [new TraceColumn("essential_normal", Column(_ => slope * 5.02, 0)), new TraceColumn("ignition_feed", Column(_ => 0, 1.2))],
        };
    }

    private static TimedEvent Happened(double minutes, EventKind kind, string part, string what) => new(Duration.FromMinutes(minutes), kind, part, what);

    private static LoadOutcome Lost(string name, double? first, double? forGood, LossReason reason) =>
        new() { Name = name, TimePowered = Minutes(first), TimeLostForGood = Minutes(forGood), LostBecause = first is null ? null : reason, TimeShed = null, WasConnected = true };

    private static BatteryOutcome Drained(string name, double chargeEnd, double ampereHours, double? exhausted) => new()
    {
        Name = name,
        ChargeStart = 1,
        ChargeEnd = chargeEnd,
        Delivered = Charge.FromAmpereHours(ampereHours),
        Received = Charge.Zero,
        DeliveredEnergy = Energy.FromWattHours(ampereHours * 11.8),
        TimeToExhaustion = Minutes(exhausted),
        StartCurrent = Current.FromAmperes(ampereHours * 0.613),
        HighestCurrent = Current.FromAmperes(ampereHours * 0.65),
    };

    private static Duration? Minutes(double? minutes) => minutes is { } value ? Duration.FromMinutes(value) : null;
}
