using System.Collections.Immutable;

namespace Endurance.Studies.BatteryFit;

/// <summary>Takes a battery's resistance from the current steps of a log.</summary>
internal static class CurrentSteps
{
    /// <summary>Rows across a step further apart than this mix resistance with recovery and with charge taken out.</summary>
    private const double WidestStep = 10;

    /// <summary>The rows on both sides that show whether the voltage had settled must be this near.</summary>
    private const double WidestNeighbour = 60;

    /// <summary>Voltage may go on moving by this part of its jump; more means that the logger reads it late.</summary>
    private const double MostDrift = 0.2;

    /// <summary>Of the largest current; smaller changes drown in noise.</summary>
    private const double LeastStep = 0.2;

    private const double Steadiness = 0.1;

    /// <param name="samples">By strictly rising time.</param>
    /// <param name="sign">1 when the log writes discharge as positive amperes, else -1.</param>
    public static StepResistance Of(ImmutableArray<LogSample> samples, int sign)
    {
        var rows = samples.Where(sample => sample is { Volts: not null, Amperes: not null })
            .Select(sample => new RunPoint(sample.Seconds, sample.Volts!.Value, sample.Amperes!.Value * sign)).ToArray();
        var least = rows.Length == 0 ? 0 : LeastStep * rows.Max(row => Math.Abs(row.Amperes));
        var steps = new List<(double Amperes, double Volts)>();
        int lagging = 0, tooCoarse = 0;
        for (var i = 1; i < rows.Length; i++)
        {
            var amperes = rows[i].Amperes - rows[i - 1].Amperes;
            if (Math.Abs(amperes) <= least)
                continue;
            var volts = rows[i].Volts - rows[i - 1].Volts;
            if (Neighbours(rows, i, Math.Abs(amperes)) is not { } drift)
                tooCoarse++;
            else if (volts * amperes >= 0 || drift > MostDrift * Math.Abs(volts))
                lagging++;
            else
                steps.Add((amperes, -volts));
        }

        // Where most steps lag, the few that seem to follow do so by chance.
        return new StepResistance(steps.Count > lagging ? Slope(steps) : null, steps.Count, lagging, tooCoarse);
    }

    /// <summary>Largest movement of the voltage just before and just after a step; <see langword="null"/>: the rows do not show it.</summary>
    private static double? Neighbours(RunPoint[] rows, int i, double step)
    {
        if (i < 2 || i + 1 >= rows.Length || rows[i].Seconds - rows[i - 1].Seconds > WidestStep)
            return null;
        var (first, before, after, last) = (rows[i - 2], rows[i - 1], rows[i], rows[i + 1]);
        var isNear = before.Seconds - first.Seconds <= WidestNeighbour && last.Seconds - after.Seconds <= WidestNeighbour;
        var isSteady = Math.Abs(before.Amperes - first.Amperes) <= Steadiness * step && Math.Abs(last.Amperes - after.Amperes) <= Steadiness * step;
        return isNear && isSteady ? Math.Max(Math.Abs(before.Volts - first.Volts), Math.Abs(last.Volts - after.Volts)) : null;
    }

    /// <summary>Least squares through the origin.</summary>
    private static FittedValue? Slope(List<(double Amperes, double Volts)> steps)
    {
        if (steps.Count == 0)
            return null;
        var squares = steps.Sum(step => step.Amperes * step.Amperes);
        var ohms = steps.Sum(step => step.Amperes * step.Volts) / squares;
        var misfit = steps.Sum(step => Math.Pow(step.Volts - (ohms * step.Amperes), 2));
        return new FittedValue(ohms, steps.Count > 1 ? Math.Sqrt(misfit / (steps.Count - 1) / squares) : null);
    }
}
