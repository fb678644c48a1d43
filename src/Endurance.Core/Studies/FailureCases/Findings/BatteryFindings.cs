using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.FailureCases.Findings;

/// <summary>Where a case strains what is known of a battery, or one battery works on another.</summary>
internal static class BatteryFindings
{
    /// <summary>Ampere-hours put back below which a recharge is not worth a word.</summary>
    private const double NoticeableRecharge = 0.05;

    /// <summary>Most charge current per ampere-hour that lacks, 1/h (common practice, no source); of an empty battery per ampere-hour of capacity.</summary>
    private const double AmpereHourRule = 1;

    /// <summary>Amperes from battery to battery below which nothing is worth a word.</summary>
    private const double NoticeableCirculation = 0.05;

    /// <summary>How far a current may leave the range that a law was taken from before it is said.</summary>
    private const double RangeSlack = 1.1;

    public static IEnumerable<Finding> Of(Scenario scenario, SimulationResult run) =>
        [.. Recharges(run), .. Unlimited(scenario, run), .. Circulation(run), .. ExponentRanges(scenario, run), .. BeyondPoints(scenario, run)];

    private static IEnumerable<Finding> Recharges(SimulationResult run) =>
        from battery in run.Batteries
        where battery.Received.AmpereHours >= NoticeableRecharge
        let value = FormattableString.Invariant($"{battery.Received.AmpereHours:F2} Ah")
        select new Finding("battery-recharged", Severity.Information, battery.Name, value,
            $"{battery.Name} takes {value} back. Charge is counted as a fraction of life, which needs more to refill than a fast discharge gave; the minutes err short.");

    /// <summary>Batteries that take more than they lack, or faster than any does, because nothing limits their charge current.</summary>
    private static IEnumerable<Finding> Unlimited(Scenario scenario, SimulationResult run) =>
        from pair in scenario.Batteries.Zip(run.Batteries)
        let capacity = pair.First.EffectiveCapacity.AmpereHours
        let lacking = (capacity * (1 - pair.Second.ChargeStart)) + pair.Second.Delivered.AmpereHours
        let received = pair.Second.Received.AmpereHours
        let charging = -pair.Second.LowestCurrent.Amperes
        where pair.First.ChargeAcceptancePerHour is null && received >= NoticeableRecharge
            && ((received * pair.First.ChargeEfficiency) > lacking + NoticeableRecharge || charging > capacity * AmpereHourRule)
        let value = FormattableString.Invariant($"{charging:F1} A")
        select new Finding("charge-not-limited", Severity.Caution, pair.First.Name, value, FormattableString.Invariant(
            $"{pair.First.Name} is charged with up to {value} and takes {received:F1} Ah, though it lacks {lacking:F1} Ah at most: nothing limits what it accepts, full or not. ")
            + "Bus volts while it charges come out too low and the alternator's load too high. Give charge_acceptance: 1 /h, or a chemistry.");

    private static IEnumerable<Finding> Circulation(SimulationResult run) =>
        from battery in run.Batteries
        where battery.CirculatingCurrent.Amperes >= NoticeableCirculation
        let value = FormattableString.Invariant($"{battery.CirculatingCurrent.Amperes:F2} A")
        select new Finding("circulating-current", Severity.Caution, battery.Name, value,
            $"{battery.Name} is charged with up to {value} while no alternator runs: another battery feeds it instead of the loads. Batteries of different age or charge in parallel do that; a diode between them stops it.");

    private static IEnumerable<Finding> ExponentRanges(Scenario scenario, SimulationResult run)
    {
        foreach (var (battery, outcome) in scenario.Batteries.Zip(run.Batteries))
        {
            if (battery.ExponentRange is not { } range)
                continue;
            var from = FormattableString.Invariant($"{range.Lowest.Amperes:0.###} A to {range.Highest.Amperes:0.###} A");
            if (outcome.HighestCurrent > range.Highest * RangeSlack)
            {
                var high = FormattableString.Invariant($"{outcome.HighestCurrent.Amperes:F2} A");
                yield return new Finding("exponent-range", Severity.Warning, battery.Name, high,
                    $"{battery.Name} gives up to {high}, but its exponent was taken from {from}. Exponents from slower discharges promise too many minutes; add a rating near the current, such as that at 1 h.");
            }

            if (outcome.LowestDischarge is { } least && least * RangeSlack < range.Lowest)
            {
                var low = FormattableString.Invariant($"{least.Amperes:F2} A");
                yield return new Finding("exponent-range", Severity.Caution, battery.Name, low,
                    $"{battery.Name} gives as little as {low}, but its exponent was taken from {from}. Add a rating near the current, such as that at 20 h.");
            }
        }
    }

    private static IEnumerable<Finding> BeyondPoints(Scenario scenario, SimulationResult run) =>
        from pair in scenario.Batteries.Zip(run.Batteries)
        let curve = pair.First.Lifetimes
        where curve is not null && pair.Second.HighestCurrent > curve.Highest * RangeSlack
        let value = FormattableString.Invariant($"{pair.Second.HighestCurrent.Amperes:F2} A")
        select new Finding("beyond-discharge-points", Severity.Warning, pair.First.Name, value,
            FormattableString.Invariant($"{pair.First.Name} gives up to {value}, above the {curve.Highest.Amperes:0.###} A at which its discharge points end. The line through the last two goes on, which is a guess."));
}
