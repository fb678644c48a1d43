using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;

namespace Endurance.Studies.LoadAnalysis;

/// <summary>Fills the amp-minute form from a failure case's own steps.</summary>
internal static class AmpMinuteStudy
{
    /// <summary><see langword="null"/> where an alternator still gives, or nothing is drawn: the form has no answer there.</summary>
    public static AmpMinuteComparison? Of(Scenario scenario, ImmutableArray<LoadItem> items, FailureCase failureCase, CaseResult result)
    {
        static bool IsAtZero(TimelineStep step) => step.Trigger is AtTime { Time.Seconds: 0 };
        Func<TimelineStep, bool> isTaken = result.Run.Recognition is null ? IsAtZero : step => step.Lasts is null;
        var atZero = State(scenario, failureCase, IsAtZero);
        var shed = State(scenario, failureCase, isTaken);
        var landing = failureCase.Landing ?? scenario.Landing;
        var landed = State(scenario, failureCase, isTaken);
        foreach (var load in landing?.Connect ?? [])
            landed.Apply(new TimelineAction(ActionVerb.Connect, load));
        var voltages = new BusVoltages(scenario);
        var current = Drawn(scenario, voltages, items, shed);
        if (scenario.Alternators.Any(shed.Gives) || current <= Current.Zero)
            return null;

        var batteries = Giving(scenario, items, shed);
        var alive = Alive(scenario, shed);
        var form = new AmpMinutes(
            Usable(scenario, voltages, batteries),
            Drawn(scenario, voltages, items, atZero),
            result.Run.Recognition ?? Duration.Zero,
            current,
            landing is null ? Current.Zero : Drawn(scenario, voltages, items, landed),
            landing?.Lasts ?? Duration.Zero);
        var simulated = result.LatestApproach is { } latest ? latest + landing!.Lasts : result.Endurance;
        if (result.LandingReserve is { Latest: null, IsEverCovered: true })
            simulated = null;
        var fed = scenario.Loads.Where(load => alive.Contains(load.Bus) && shed.IsOn(load.Name));
        var why = new AmpMinuteDifference(form, batteries, [.. fed], scenario.NominalVoltage, voltages).Explain(landing, result);
        return new AmpMinuteComparison(failureCase.Name, form, simulated, result.LandingReserve is { IsEverCovered: false }, why) { BreakOff = result.BreakOff };
    }

    /// <summary>Batteries that have not failed and that reach something that draws.</summary>
    private static ImmutableArray<Battery> Giving(Scenario scenario, ImmutableArray<LoadItem> items, WiringState state) =>
    [
        .. scenario.Batteries.Where(state.Gives).Where(battery =>
        {
            var reached = state.ReachedFrom([battery.Bus]);
            return items.Any(item => reached.Contains(item.Bus) && IsOn(scenario, item, state));
        }),
    ];

    /// <summary>Ampere-hours at the system's voltage.</summary>
    private static Charge Usable(Scenario scenario, BusVoltages voltages, ImmutableArray<Battery> batteries) =>
        batteries.Aggregate(Charge.Zero, (sum, battery) =>
            sum + (battery.EffectiveCapacity * (battery.InitialCharge * (voltages.Of(battery.Bus) / scenario.NominalVoltage))));

    private static WiringState State(Scenario scenario, FailureCase failureCase, Func<TimelineStep, bool> isTaken)
    {
        var state = new WiringState(scenario);
        foreach (var action in failureCase.Timeline.Where(isTaken).SelectMany(step => step.Actions))
            state.Apply(action);
        return state;
    }

    /// <summary>Means of everything that is on and that a battery reaches, at the system's voltage.</summary>
    private static Current Drawn(Scenario scenario, BusVoltages voltages, ImmutableArray<LoadItem> items, WiringState state)
    {
        var alive = Alive(scenario, state);
        return items.Where(item => alive.Contains(item.Bus) && IsOn(scenario, item, state))
            .Aggregate(Current.Zero, (sum, item) => sum + (item.Mean * AtSystem(scenario, voltages, item, state)));
    }

    /// <summary>A battery on the load's own side of a converter feeds it without the converter's losses.</summary>
    private static double AtSystem(Scenario scenario, BusVoltages voltages, LoadItem item, WiringState state) =>
        scenario.Batteries.Any(battery => state.Gives(battery) && voltages.AreTied(battery.Bus, item.Bus)) ? item.Nominal / scenario.NominalVoltage : item.AtSystem;

    private static HashSet<string> Alive(Scenario scenario, WiringState state) =>
        state.ReachedFrom(scenario.Batteries.Where(state.Gives).Select(battery => battery.Bus));

    private static bool IsOn(Scenario scenario, LoadItem item, WiringState state) => item.Kind switch
    {
        LoadItemKind.Coil => state.IsEnergised(scenario.Feeds.First(feed => string.Equals(feed.Name, item.Part, StringComparison.Ordinal))),
        LoadItemKind.Field => item.IsOn && state.IsOn(item.Part),
        _ => state.IsOn(item.Part),
    };
}
