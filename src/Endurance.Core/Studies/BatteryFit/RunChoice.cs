using System.Collections.Immutable;
using Endurance.Quantities;

namespace Endurance.Studies.BatteryFit;

/// <summary>Which runs a fit rests on, and which voltages end a discharge.</summary>
/// <param name="Fitted">At least one; in order of time.</param>
/// <param name="EndVoltages">Highest first.</param>
/// <param name="Incomplete">Numbers of runs left out because they stopped early.</param>
internal sealed record RunChoice(ImmutableArray<DischargeRun> Fitted, ImmutableArray<Voltage> EndVoltages, ImmutableArray<int> Incomplete)
{
    /// <summary>A run that ends higher than this fraction of the lowest voltage above it was broken off.</summary>
    private const double MostAboveLowest = 0.04;

    /// <returns>A choice, or a sentence that says why there is none.</returns>
    public static (RunChoice? Choice, string? Refusal) Of(FoundDischarges found, BatteryFitOptions options)
    {
        var runs = found.Runs;
        if (runs.IsEmpty)
            return (null, FormattableString.Invariant($"the log holds no discharge: no span of at least 5 min in which the current stays above {found.Threshold.Amperes:0.###} A, a fiftieth of its largest, while the voltage falls"));
        var strangers = options.Runs.Where(number => number < 1 || number > runs.Length).ToList();
        if (strangers.Count > 0)
            return (null, FormattableString.Invariant($"there is no run {strangers[0]}; the log has {(runs.Length == 1 ? "run 1 alone" : $"runs 1 to {runs.Length}")}"));
        var chosen = options.Runs.IsEmpty ? runs : [.. runs.Where(run => options.Runs.Contains(run.Number))];
        return options.EndVoltages.IsEmpty ? LastReached(chosen, isTyped: !options.Runs.IsEmpty) : To(chosen, options);
    }

    private static (RunChoice? Choice, string? Refusal) To(ImmutableArray<DischargeRun> chosen, BatteryFitOptions options)
    {
        ImmutableArray<Voltage> ends = [.. options.EndVoltages.Distinct().OrderByDescending(end => end.Volts)];
        ImmutableArray<DischargeRun> complete = [.. chosen.Where(run => run.TimeTo(ends[^1]) > Duration.Zero)];
        if (complete.Length > 0)
            return (new RunChoice(complete, ends, Without(chosen, complete)), null);
        if (chosen.All(run => run.TimeTo(ends[^1]) is not null))
            return (null, $"every run starts below {Text(ends[^1])} already; choose a lower end voltage");
        var deepest = chosen.Where(run => run.TimeTo(ends[^1]) is null).MinBy(run => run.LowestVoltage.Volts)!;
        return (null, FormattableString.Invariant($"no run goes down to {Text(ends[^1])}: run {deepest.Number} comes nearest, with {Text(deepest.LowestVoltage)}; choose a higher end voltage, or leave it out and the last voltage reached counts"));
    }

    private static (RunChoice? Choice, string? Refusal) LastReached(ImmutableArray<DischargeRun> chosen, bool isTyped)
    {
        var lowest = chosen.Min(run => run.LowestVoltage.Volts);
        ImmutableArray<DischargeRun> complete = isTyped ? chosen : [.. chosen.Where(run => run.LowestVoltage.Volts <= lowest * (1 + MostAboveLowest))];
        var end = complete.MaxBy(run => run.LowestVoltage.Volts)!.LowestVoltage;
        return (new RunChoice(complete, [end], Without(chosen, complete)), null);
    }

    private static ImmutableArray<int> Without(ImmutableArray<DischargeRun> chosen, ImmutableArray<DischargeRun> complete) =>
        [.. chosen.Select(run => run.Number).Except(complete.Select(run => run.Number))];

    private static string Text(Voltage voltage) => FormattableString.Invariant($"{voltage.Volts:0.###} V");
}
