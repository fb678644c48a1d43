using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

/// <summary>Steps that last for a time: what they do holds for exactly that time and is then as before.</summary>
public sealed class UndoneStepsTests
{
    private const string Aft = "aft";

    /// <summary>The volts of the far bus while the step lasts; 12 V, 2 ohm of lamp and 0.1 ohm on the way without it.</summary>
    [Theory]
    [InlineData(ActionVerb.Fail, "battery", null, 0)]
    [InlineData(ActionVerb.ShortCell, "battery", null, 10 * 2 / 2.1)]
    [InlineData(ActionVerb.Open, "feed", null, 0)]
    [InlineData(ActionVerb.Open, "feed.switch", null, 0)]
    [InlineData(ActionVerb.Open, "feed.breaker", null, 0)]
    [InlineData(ActionVerb.Break, "feed", null, 0)]
    [InlineData(ActionVerb.Shed, "lamp", null, 12)]
    [InlineData(ActionVerb.Connect, "heater", null, 12 * 1 / 1.1)]
    [InlineData(ActionVerb.Connect, "alternator", null, 13 * 2 / 2.1)] // 14 V and 12 V behind a micro-ohm each
    [InlineData(ActionVerb.Start, "engine", ActionVerb.Stop, 12 * 2 / 2.1)]
    [InlineData(ActionVerb.Restore, "battery", ActionVerb.Fail, 12 * 2 / 2.1)]
    [InlineData(ActionVerb.Restore, "feed", ActionVerb.Break, 12 * 2 / 2.1)]
    [InlineData(ActionVerb.Close, "feed", ActionVerb.Open, 12 * 2 / 2.1)]
    [InlineData(ActionVerb.Connect, "lamp", ActionVerb.Shed, 12 * 2 / 2.1)]
    [InlineData(ActionVerb.Select, "selector", null, 0)]
    public void Step_ThatLastsFourMinutes_HoldsForThemAndIsUndone(ActionVerb verb, string target, ActionVerb? before, double volts)
    {
        TimelineStep[] steps = before is { } first ? [At(0, (first, target))] : [];
        var lasting = new TimelineStep
        {
            Trigger = new AtTime(Duration.FromMinutes(4)),
            Actions = [new TimelineAction(verb, target, verb == ActionVerb.Select ? Aft : null)],
            Lasts = Duration.FromMinutes(4),
        };

        var run = Bench.Run(Case([.. steps, lasting]), new SimulationOptions { SampleInterval = Duration.FromMinutes(1) });

        Assert.Equal(volts, FarVolts(run, 5), 1e-4);
        Assert.Equal(volts, FarVolts(run, 7), 1e-4);
        Assert.Equal(FarVolts(run, 2), FarVolts(run, 9), 1e-6);
        Assert.Equal(8, Assert.Single(run.Events, happened => happened.What.EndsWith(" (undone)", StringComparison.Ordinal)).Time.Minutes, 1e-9);
    }

    /// <summary>An alternator of 14 V that gives 3 A at idle, in place of the battery: 2 ohm of lamp want 6.7 A, 3 A are 6 V there.</summary>
    [Theory]
    [InlineData(ActionVerb.Idle, null, 6)]
    [InlineData(ActionVerb.Cruise, ActionVerb.Idle, 14 * 2 / 2.1)]
    [InlineData(ActionVerb.Stop, null, 0)]
    [InlineData(ActionVerb.Start, ActionVerb.Stop, 14 * 2 / 2.1)]
    public void EngineStep_ThatLastsFourMinutes_HoldsForThemAndIsUndone(ActionVerb verb, ActionVerb? before, double volts)
    {
        var scenario = Bench with
        {
            Batteries = [],
            Alternators = [Bench.Alternators[0] with { IsOn = true, LimitIdle = Current.FromAmperes(3) }],
        };
        TimelineStep[] steps = before is { } first ? [At(0, (first, "engine"))] : [];
        var lasting = At(4, (verb, "engine")) with { Lasts = Duration.FromMinutes(4) };

        var run = scenario.Run(Case([.. steps, lasting]), new SimulationOptions { SampleInterval = Duration.FromMinutes(1) });

        Assert.Equal(volts, FarVolts(run, 6), 1e-4);
        Assert.Equal(FarVolts(run, 2), FarVolts(run, 9), 1e-6);
        Assert.NotEqual(FarVolts(run, 2), FarVolts(run, 6), 0.1);
    }

    /// <summary>A run ends when no source is left: 0 V from there on.</summary>
    private static double FarVolts(SimulationResult run, double minutes) =>
        run.Trace!.Seconds.IndexOf(minutes * 60) is >= 0 and var sample ? run.Trace.BusVolts[1].Values[sample] : 0;

    private static Scenario Bench => Scenario(0.25) with
    {
        Buses = [Bus("near"), Bus("far"), Bus("tail")],
        Batteries = [Ramp.Steady(12, bus: "near") with { Resistance = Endurance.Numerics.PiecewiseLinear.Constant(1e-6), Cells = 6 }],
        Alternators = [Alternator("alternator", "near", 14, 1e-3, 4e6) with { DrivenBy = "engine", IsOn = false }],
        Feeds =
        [
            Feed("feed", "near", "far", 100) with
            {
                Contactor = new Contactor { IsClosed = true },
                Switch = new Switch { IsClosed = true },
                Breaker = new Protection { Kind = ProtectionKind.Breaker, Rating = Current.FromAmperes(50) },
            },
            Feed("spare", "near", "tail", 100),
        ],
        Selectors = [new Selector { Name = "selector", Positions = [("front", "feed"), (Aft, "spare")], At = "front" }],
        Loads = [Ohms("lamp", "far", 2), Ohms("heater", "far", 2).Off()],
    };
}
