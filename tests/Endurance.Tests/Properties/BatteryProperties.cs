using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Tests.Yaml;
using FsCheck;
using FsCheck.Xunit;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Properties;

/// <summary>Laws of batteries over many values; the replay seed makes every run the same.</summary>
[Properties(Replay = "(20261125,77)", MaxTest = 60)]
public sealed class BatteryProperties
{
    private static readonly PiecewiseLinear Emf = Table((0, 10.6), (20, 12), (100, 12.8));

    [Property]
    public void KineticModel_WhateverTheLoad_ConservesCharge(byte available, byte rate, byte first, byte second, byte minutes)
    {
        var battery = Kinetic(Within(available, 0.2, 0.8), Within(rate, 0.05, 5));
        var scenario = Bench(battery, Within(first, 1, 30), Within(second, 1, 30));
        var run = scenario.Run(Case(At(Within(minutes, 1, 20), (ActionVerb.Shed, "first")), At(Within(minutes, 2, 60), (ActionVerb.Connect, "second"))));

        var outcome = run.Battery("battery");
        Assert.Equal(20 - outcome.Delivered.AmpereHours, 20 * outcome.ChargeEnd, 1e-4);
    }

    [Property]
    public void Recovery_InARest_NeverExceedsWhatWasDrawn(byte available, byte rate, byte amperes, byte minutes, byte rest)
    {
        var battery = Kinetic(Within(available, 0.2, 0.8), Within(rate, 0.05, 5));
        var draw = Within(amperes, 5, 20);
        var on = Within(minutes, 1, 10);
        var rested = on + Within(rest, 1, 600);
        var afterRest = Bench(battery, draw, draw).Run(Case(At(on, (ActionVerb.Shed, "first")), At(rested, (ActionVerb.Connect, "second"))));
        var straight = Bench(battery, draw, draw).Run(Case(At(on, (ActionVerb.Shed, "first"), (ActionVerb.Connect, "second"))));

        var gainedMinutes = afterRest.Battery("battery").TimeToExhaustion.Minutes() - (rested - on) - straight.Battery("battery").TimeToExhaustion.Minutes();
        Assert.InRange(gainedMinutes, -1e-4, on);
    }

    /// <summary>At the 20-, 5- and 1-hour currents the fitted wells have the Peukert lifetimes, so the order of currents alone makes the difference.</summary>
    [Property]
    public void KineticModel_BesideThePeukertSum_IsLongerWhenTheCurrentFallsAndShorterWhenItRises(byte exponent, byte part, bool falls, bool slowest)
    {
        var battery = Battery("battery", "bus", 16, 20, Within(exponent, 1.08, 1.35), PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(1));
        var fast = battery.NewCurrentFor(Duration.FromHours(1));
        var slow = battery.NewCurrentFor(Duration.FromHours(slowest ? 20 : 5));
        var (before, after) = falls ? (fast, slow) : (slow, fast);
        var change = battery.LifetimeAt(before).Minutes * Within(part, 0.2, 0.8);
        double Minutes(CapacityModel model) => Bench(battery with { CapacityModel = model }, before.Amperes, after.Amperes)
            .Run(Case(At(change, (ActionVerb.Shed, "first"), (ActionVerb.Connect, "second")))).Battery("battery").TimeToExhaustion.Minutes();

        var difference = Minutes(CapacityModel.Kinetic) - Minutes(CapacityModel.Peukert);
        Assert.True(falls ? difference > 0 : difference < 0, FormattableString.Invariant($"{difference} min"));
    }

    [Property]
    public void PlainDischarge_WithMoreHealthOrCapacity_IsNeverShorter(byte capacity, byte health, byte amperes, byte more, bool kinetic)
    {
        var battery = Battery("battery", "bus", Within(capacity, 5, 30), 20, 1.2, Emf, PiecewiseLinear.Constant(20)) with
        {
            Health = Within(health, 0.4, 1),
            CapacityModel = kinetic ? CapacityModel.Kinetic : CapacityModel.Peukert,
        };
        var factor = Within(more, 1, 1.5);
        var load = Within(amperes, 0.5, 25);

        var plain = Minutes(battery, load);
        Assert.True(Minutes(battery with { Health = battery.Health * factor }, load) >= plain - 1e-6);
        Assert.True(Minutes(battery with { RatedCapacity = battery.RatedCapacity * factor }, load) >= plain - 1e-6);
    }

    [Property]
    public void PlainDischarge_WhenWarmer_IsNeverShorter(byte chemistry, byte celsius, byte warmer, byte amperes)
    {
        string[] words = ["flooded", "agm", "gel", "nicd", "lifepo4"];
        var cold = Within(celsius, -15, 20);
        Battery At(double temperature) => BatteryText.Battery(FormattableString.Invariant(
            $"chemistry: {words[chemistry % words.Length]}, capacity: 18 Ah, rate: 20 h, temperature: {temperature:F2} degC"));
        var load = Within(amperes, 0.5, 20);

        Assert.True(Minutes(At(cold + Within(warmer, 0, 20)), load) >= Minutes(At(cold), load) - 1e-6);
    }

    [Property]
    public void ParallelBatteries_InEitherOrder_GiveTheSameAnswer(byte charge, byte health, byte ohms, byte amperes)
    {
        var one = Battery("one", "bus", 16, 20, 1.2, Emf, PiecewiseLinear.Constant(20));
        var two = Battery("two", "bus", 9, 20, 1.15, Emf, PiecewiseLinear.Constant(Within(ohms, 10, 80))) with
        {
            InitialCharge = Within(charge, 0.3, 1),
            Health = Within(health, 0.5, 1),
            CapacityModel = CapacityModel.Kinetic,
        };
        var scenario = Scenario(horizonHours: 40) with { Buses = [Bus("bus")], Loads = [Amperes("load", "bus", Within(amperes, 1, 25), 10.5)] };

        var forward = (scenario with { Batteries = [one, two] }).Run();
        var backward = (scenario with { Batteries = [two, one] }).Run();

        Assert.Equal(forward.Load("load").TimePowered.Minutes(), backward.Load("load").TimePowered.Minutes(), 1e-3);
        Assert.Equal(forward.Battery("two").StartCurrent.Amperes, backward.Battery("two").StartCurrent.Amperes, 1e-9);
    }

    private static double Within(byte value, double least, double most) => least + ((most - least) * value / 255);

    private static Battery Kinetic(double available, double rate) =>
        Battery("battery", "bus", 20, 20, 1.2, Emf, PiecewiseLinear.Constant(1)) with
        {
            CapacityModel = CapacityModel.Kinetic,
            TypedWells = new KineticWells { Available = available, RatePerHour = rate, Capacity = Charge.FromAmpereHours(20) },
        };

    private static Scenario Bench(Battery battery, double first, double second) => Scenario(horizonHours: 60) with
    {
        Buses = [Bus("bus")],
        Batteries = [battery],
        Loads = [Amperes("first", "bus", first), Amperes("second", "bus", second) with { IsOn = false }],
    };

    private static double Minutes(Battery battery, double amperes) => (Scenario(horizonHours: 100) with
    {
        Buses = [Bus("bus")],
        Batteries = [battery],
        Loads = [Amperes("load", "bus", amperes, 10.2)],
    }).Run().Load("load").TimePowered.Minutes();
}
