using Endurance.Components;
using Endurance.Quantities;
using static System.FormattableString;

namespace Endurance.Scenarios.Rules;

/// <summary>Pairs of voltages and currents that must stand in order: what switches on and off, what limits and trips.</summary>
internal static class ThresholdRules
{
    public static IEnumerable<RuleFinding> Check(Scenario scenario) =>
    [
        .. scenario.Chargers.Where(charger => charger.CutOut > charger.CutIn).Select(CutOutAboveCutIn),
        .. scenario.Feeds.Where(feed => feed.Contactor is { } coil && coil.DropsOutBelow > coil.PullsInAbove).Select(DropsOutAbovePullIn),
        .. scenario.Alternators.SelectMany(AlternatorFindings),
    ];

    private static RuleFinding CutOutAboveCutIn(Charger charger) => RuleFinding.Error(
        "cut-out-above-cut-in", $"chargers.{charger.Name}.cut_out", Text(charger.CutOut!.Value),
        $"`{charger.Name}` would stop at {Text(charger.CutOut!.Value)}, above its cut-in of {Text(charger.CutIn!.Value)}",
        $"a voltage of {Text(charger.CutIn!.Value)} or less");

    private static RuleFinding DropsOutAbovePullIn(Feed feed) => RuleFinding.Error(
        "drop-out-above-pull-in", $"feeds.{feed.Name}.contactor.drops_out_below", Text(feed.Contactor!.DropsOutBelow!.Value),
        $"the contactor of `{feed.Name}` would drop out at {Text(feed.Contactor!.DropsOutBelow!.Value)}, above the {Text(feed.Contactor!.PullsInAbove!.Value)} at which it pulls in",
        $"a voltage of {Text(feed.Contactor!.PullsInAbove!.Value)} or less");

    private static IEnumerable<RuleFinding> AlternatorFindings(Alternator alternator)
    {
        if (alternator.TripsAbove is { } trip && trip <= alternator.Setpoint)
        {
            yield return RuleFinding.Warning(
                "trips-at-setpoint", $"alternators.{alternator.Name}.trips_above", Text(trip),
                $"`{alternator.Name}` regulates at {Text(alternator.Setpoint)} and trips above {Text(trip)}: it takes itself off",
                $"a voltage above {Text(alternator.Setpoint)}");
        }

        if (alternator.LimitIdle is { } idle && idle > alternator.Rated)
        {
            yield return RuleFinding.Warning(
                "idle-above-rated", $"alternators.{alternator.Name}.limit_idle", Invariant($"{idle.Amperes:0.###} A"),
                Invariant($"`{alternator.Name}` would give {idle.Amperes:0.###} A at idle, more than its {alternator.Rated.Amperes:0.###} A at cruise"),
                Invariant($"at most {alternator.Rated.Amperes:0.###} A"));
        }

        if (alternator is { LimitIdle: not null, DrivenBy: null })
        {
            yield return RuleFinding.Warning(
                "idle-without-engine", $"alternators.{alternator.Name}.limit_idle", "",
                $"`{alternator.Name}` has a limit at idle but no engine that could idle", "`driven_by` with the name of its engine");
        }
    }

    private static string Text(Voltage volts) => Invariant($"{volts.Volts:0.###} V");
}
