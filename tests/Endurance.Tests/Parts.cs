using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;

namespace Endurance.Tests;

/// <summary>Short ways to write a network in a test.</summary>
internal static class Parts
{
    public static readonly Temperature Room = Temperature.FromCelsius(25);

    public static PiecewiseLinear Table(params (double Percent, double Value)[] points) =>
        PiecewiseLinear.FromPoints([.. points.Select(point => (point.Percent / 100, point.Value))]);

    public static Battery Battery(
        string name, string bus, double ampereHours, double hours, double peukert, PiecewiseLinear emf, PiecewiseLinear milliohms, double efficiency = 1) => new()
        {
            Name = name,
            Bus = bus,
            RatedCapacity = Charge.FromAmpereHours(ampereHours),
            Rate = Duration.FromHours(hours),
            PeukertExponent = peukert,
            Emf = emf,
            Resistance = milliohms.Scaled(1e-3),
            ChargeEfficiency = efficiency,
            Temperature = Room,
        };

    public static Bus Bus(string name, double? cutoff = null) =>
        new() { Name = name, Cutoff = cutoff is { } volts ? Voltage.FromVolts(volts) : null };

    public static Load Amperes(string name, string bus, double amperes, double? minimum = null) => LoadOf(name, bus, new ConstantCurrent(Current.FromAmperes(amperes)), minimum);

    public static Load Watts(string name, string bus, double watts, double? minimum = null) => LoadOf(name, bus, new ConstantPower(Power.FromWatts(watts)), minimum);

    public static Load Ohms(string name, string bus, double ohms, double? minimum = null) => LoadOf(name, bus, new ConstantResistance(Resistance.FromOhms(ohms)), minimum);

    public static Alternator Alternator(string name, string bus, double setpoint, double droopMilliohms, double amperes) => new()
    {
        Name = name,
        Bus = bus,
        Setpoint = Voltage.FromVolts(setpoint),
        Droop = Resistance.FromMilliohms(droopMilliohms),
        Rated = Current.FromAmperes(amperes),
    };

    public static Wire Wire(double milliohms) => new() { Resistance = Resistance.FromMilliohms(milliohms) };

    public static Feed Feed(string name, string from, string to, double? milliohms = null, Diode? diode = null) =>
        new() { Name = name, From = from, To = to, Wire = milliohms is { } value ? Wire(value) : null, Diode = diode };

    public static JunctionDiode Schottky(double microamperes, double ideality, double milliohms) => new()
    {
        Kind = SemiconductorKind.Schottky,
        SaturationCurrent = Current.FromAmperes(microamperes * 1e-6),
        Ideality = ideality,
        SeriesResistance = Resistance.FromMilliohms(milliohms),
        Temperature = Temperature.FromKelvin(300.15),
        EnergyGap = 0.69,
        SaturationExponent = 2,
    };

    public static FailureCase Case(params TimelineStep[] steps) => new() { Name = "case", Timeline = [.. steps] };

    public static TimelineStep At(double minutes, params (ActionVerb Verb, string Target)[] actions) =>
        Step(new AtTime(Duration.FromMinutes(minutes)), actions);

    public static TimelineStep When(string bus, double below, double seconds, params (ActionVerb Verb, string Target)[] actions) =>
        Step(new WhenBelow(bus, Voltage.FromVolts(below), Duration.FromSeconds(seconds)), actions);

    public static Scenario Scenario(double horizonHours = 4) => new()
    {
        Title = "test",
        System = SystemVoltage.Volts14,
        Ambient = Room,
        Horizon = Duration.FromHours(horizonHours),
    };

    public static SimulationResult Run(this Scenario scenario, FailureCase? failureCase = null, SimulationOptions? options = null) =>
        new Simulator(scenario).Run(failureCase ?? Case(), options ?? new SimulationOptions());

    public static CaseResult Judge(this Scenario scenario, FailureCase? failureCase = null) =>
        FailureCaseStudy.Run(scenario, [failureCase ?? Case()], new SimulationOptions())[0];

    public static BusOutcome Bus(this SimulationResult run, string name) => run.Buses.Single(bus => string.Equals(bus.Name, name, StringComparison.Ordinal));

    public static LoadOutcome Load(this SimulationResult run, string name) => run.Loads.Single(load => string.Equals(load.Name, name, StringComparison.Ordinal));

    public static BatteryOutcome Battery(this SimulationResult run, string name) => run.Batteries.Single(battery => string.Equals(battery.Name, name, StringComparison.Ordinal));

    public static FeedOutcome Feed(this SimulationResult run, string name) => run.Feeds.Single(feed => string.Equals(feed.Name, name, StringComparison.Ordinal));

    public static double Minutes(this Duration? time) => time?.Minutes ?? double.PositiveInfinity;

    private static Load LoadOf(string name, string bus, Demand demand, double? minimum) => new()
    {
        Name = name,
        Bus = bus,
        Demand = demand,
        Minimum = minimum is { } volts ? Voltage.FromVolts(volts) : null,
        IsEssential = true,
    };

    private static TimelineStep Step(Trigger trigger, (ActionVerb Verb, string Target)[] actions) =>
        new() { Trigger = trigger, Actions = [.. actions.Select(action => new TimelineAction(action.Verb, action.Target))] };
}
