using System.Collections.Immutable;
using Endurance.Quantities;

namespace Endurance.Studies.BatteryFit;

/// <summary>Judges runs as capacity tests.</summary>
internal static class CapacityTests
{
    /// <param name="runs">Every run of the log.</param>
    /// <param name="options">With the rating; without it nothing is judged.</param>
    /// <param name="choice">The runs of the fit are judged, and those that were asked for but stopped early.</param>
    /// <param name="exponent">Carries the rating over to the current of a run.</param>
    public static ImmutableArray<CapacityTest> Of(ImmutableArray<DischargeRun> runs, BatteryFitOptions options, RunChoice choice, double exponent)
    {
        if (options.Rated is not { } rated)
            return [];
        var isAsked = !options.Runs.IsEmpty;
        return [.. runs
            .Where(run => choice.Fitted.Contains(run) || (isAsked && choice.Incomplete.Contains(run.Number)))
            .Select(run => Of(run, rated, choice.EndVoltages[^1], exponent, options.PassFraction))];
    }

    private static CapacityTest Of(DischargeRun run, RatedCapacity rated, Voltage asked, double exponent, double pass)
    {
        var reached = run.TimeTo(asked);
        var end = reached is null ? run.LowestVoltage : asked;
        var time = reached ?? run.TimeTo(end)!.Value;
        var fraction = run.LifeUsed(exponent, rated.Current.Amperes, time) / rated.Rate.Seconds;
        return new CapacityTest(run.Number, end, reached is not null, time, fraction, fraction >= pass);
    }
}
