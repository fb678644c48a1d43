using System.Collections.Immutable;
using Endurance.Findings;
using static System.FormattableString;

namespace Endurance.Studies.BatteryFit;

/// <summary>What a fit has to say about itself.</summary>
internal static class FitFindings
{
    private const double RatedCelsius = 25;
    private const double CoolestUncorrected = 20;
    private const double WarmestUncorrected = 30;

    /// <summary>Beyond this ratio of currents an unknown exponent moves the capacity by more than a few percent.</summary>
    private const double NearRatio = 1.2;

    /// <summary>Of what a run delivers; less is lost among the errors of a log.</summary>
    private const double LeastMissing = 0.05;

    public static ImmutableArray<Finding> Of(BatteryFitResult result, BatteryFitOptions options, RunChoice choice, bool isLevelled)
    {
        IEnumerable<Finding?> findings =
        [
            .. result.Discharges.Findings,
            .. choice.Incomplete.Select(number => Incomplete(result, number)),
            .. choice.Fitted.Select(NotFromFull),
            EndVoltage(options, choice),
            Resistance(result, options),
            Exponent(result, options),
            BelowOne(result),
            Temperature(choice),
            isLevelled ? new Finding("emf-levelled", Severity.Caution, "emf", "", "The fitted EMF fell over a part of the charge, which no scenario takes; that part is level now.") : null,
            result.Health is { Value: > FittedBattery.MostHealth } health
                ? new Finding("health-beyond-limit", Severity.Warning, "health", Percent(health.Value), $"The battery gives {Percent(health.Value)} of its rating, more than a scenario takes as health: check --rated. What was measured is written instead.")
                : null,
            new Finding("starts-full", Severity.Information, "runs", "", "Every run is taken to start from a full battery: a log cannot show it."),
        ];
        return [.. findings.OfType<Finding>().OrderByDescending(finding => finding.Severity)];
    }

    private static Finding Incomplete(BatteryFitResult result, int number)
    {
        var lowest = result.Runs[number - 1].Run.LowestVoltage.Volts;
        return new Finding("run-incomplete", Severity.Caution, Invariant($"run {number}"), Invariant($"{lowest:0.000} V"),
            Invariant($"Run {number} stopped at {lowest:0.000} V, before its end; the fit does without it."));
    }

    private static Finding? NotFromFull(DischargeRun run) => run.Missing is not { } missing || missing < run.Delivered * LeastMissing
        ? null
        : new Finding("run-not-from-full", Severity.Warning, Invariant($"run {run.Number}"), Invariant($"{missing.AmpereHours:0.00} Ah"),
            Invariant($"By the log, {missing.AmpereHours:0.00} Ah were out of the battery when run {run.Number} began, and a fit takes every run to start from full: capacity and health come out too low. Charge it in full before each run, or choose others with --run."));

    private static Finding? EndVoltage(BatteryFitOptions options, RunChoice choice)
    {
        if (!options.EndVoltages.IsEmpty)
            return null;
        var volts = Invariant($"{choice.EndVoltages[^1].Volts:0.000} V");
        return new Finding("end-voltage-not-given", Severity.Caution, "end voltage", volts,
            $"No end voltage was given, so capacity counts to {volts}, the last voltage that every run of the fit reached. A rating counts to its own end voltage: give it with --to.");
    }

    private static Finding? Resistance(BatteryFitResult result, BatteryFitOptions options)
    {
        if (options.Resistance is not null || result.IsResistanceKnown)
            return null;
        var steps = result.Steps;
        var why = (steps.Lagging, steps.TooCoarse) switch
        {
            (0, 0) => "the log has no current steps",
            (0, _) => $"at {Steps(steps.TooCoarse)} the rows are too far apart",
            (_, 0) => $"at {Steps(steps.Lagging)} the voltage follows late or not at all",
            _ => Invariant($"at {Steps(steps.Lagging)} the voltage follows late or not at all, and at {steps.TooCoarse} the rows are too far apart"),
        };
        return new Finding("resistance-not-measured", Severity.Warning, "resistance", Invariant($"{result.Resistance.Ohms * 1e3:0.#} mohm"),
            Invariant($"No resistance can be told: {why}. {result.Resistance.Ohms * 1e3:0.#} mohm is written and the EMF table holds the drop at {result.Law.Pivot.Amperes:0.###} A, ")
            + "so at higher currents the voltage comes out too high and the minutes too long. Measure it with a load that switches, or give it with --resistance.");
    }

    private static Finding? Exponent(BatteryFitResult result, BatteryFitOptions options)
    {
        if (options.PeukertExponent is not null || result.Law.IsExponentMeasured)
            return null;
        var amperes = result.Law.Pivot.Amperes;
        var overRated = amperes / (options.Rated?.Current.Amperes ?? amperes);
        return new Finding("exponent-not-measured", Severity.Warning, "peukert", "1",
            Invariant($"The fit has one rate only ({amperes:0.###} A), which tells no exponent: 1 is written, so above that current the minutes come out too long. ")
            + overRated switch
            {
                > NearRatio => "The comparison with the rating, which is for a lower current, takes 1 as well, so health comes out too low. ",
                < 1 / NearRatio => "The comparison with the rating, which is for a higher current, takes 1 as well, so health comes out too high: a capacity test passed so proves nothing. ",
                _ => "",
            }
            + "Log a second rate, or give it with --peukert.");
    }

    private static Finding? BelowOne(BatteryFitResult result)
    {
        if (result.Law.Exponent.Value >= 1)
            return null;
        var text = Invariant($"{result.Law.Exponent.Value:0.000}");
        return new Finding("exponent-below-one", Severity.Warning, "peukert", text,
            $"The exponent comes out as {text}, below 1: more capacity at higher current, which order and ageing of the runs can feign. The predictions use it; "
            + "1 is written, the least that a scenario takes.");
    }

    private static Finding? Temperature(RunChoice choice)
    {
        var celsius = choice.Fitted.Where(run => run.Temperature is not null).Select(run => run.Temperature!.Value.Celsius).ToList();
        if (celsius.Count == 0)
            return new Finding("temperature-not-logged", Severity.Caution, "temperature", "", "The log holds no temperature; capacity and resistance are taken for those at 25 degC.");
        var odd = celsius.MaxBy(value => Math.Abs(value - RatedCelsius));
        return odd is >= CoolestUncorrected and <= WarmestUncorrected
            ? null
            : new Finding(
                "temperature-off-25", odd > RatedCelsius ? Severity.Warning : Severity.Caution, "temperature", Invariant($"{odd:0.0} degC"),
                Invariant($"A run of the fit was made at {odd:0.0} degC; nothing is corrected to 25 degC, where ratings and scenarios stand, so capacity comes out too {(odd > RatedCelsius ? "high and the minutes too long" : "low, and a chemistry would take the cold off a second time")}."));
    }

    private static string Steps(int count) => count == 1 ? "1 current step" : Invariant($"{count} current steps");

    private static string Percent(double fraction) => Invariant($"{fraction * 100:0.0} %");
}
