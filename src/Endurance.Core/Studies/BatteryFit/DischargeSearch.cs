using System.Collections.Immutable;
using System.Globalization;
using Endurance.Findings;
using Endurance.Quantities;

namespace Endurance.Studies.BatteryFit;

/// <summary>Finds the discharges of a log: spans in which the current stays above a threshold and the voltage falls.</summary>
public static class DischargeSearch
{
    /// <summary>Of the largest current: what a shunt reads at rest is well below, a 50-hour rate well above.</summary>
    private const double ThresholdFraction = 0.02;

    /// <summary>Of the threshold: what flows by the offset of a shunt alone.</summary>
    private const double NoiseFraction = 0.1;

    /// <summary>Volts; less a battery loses at rest.</summary>
    private const double LeastFall = 0.5;

    /// <summary>Shorter loads are switching, not a discharge.</summary>
    private static readonly Duration Shortest = Duration.FromMinutes(5);

    /// <summary>A load that is off for no longer belongs to one discharge.</summary>
    private static readonly Duration LongestPause = Duration.FromMinutes(2);

    /// <summary>Over a longer silence nobody knows the current.</summary>
    private static readonly Duration LongestGap = Duration.FromMinutes(15);

    /// <summary>The voltage this long before the load comes on is taken for the rest voltage: loggers smear the switching itself.</summary>
    private const double SecondsBeforeLoad = 60;

    /// <param name="samples">By strictly rising time.</param>
    public static FoundDischarges Find(ImmutableArray<LogSample> samples)
    {
        var points = Joined(samples);
        var threshold = points.Count == 0 ? 0 : ThresholdFraction * points.Max(point => Math.Abs(point.Amperes));
        var positive = Spans(points, 1, threshold);
        var negative = Spans(points, -1, threshold);
        var isDischargePositive = Fall(points, positive) - Fall(points, negative) >= 0;
        var sign = isDischargePositive ? 1 : -1;
        var falling = (isDischargePositive ? positive : negative).Where(span => Fall(points, [span]) > 0).ToList();
        var runs = falling.Where(span => points[span.Last].Seconds - points[span.First].Seconds >= Shortest.Seconds).ToList();
        return new FoundDischarges
        {
            Runs = WithMissing([.. runs.Select((span, i) => Run(i + 1, points, span, sign, threshold, samples))], runs, points, sign),
            IsDischargePositive = isDischargePositive,
            Threshold = Current.FromAmperes(threshold),
            Findings = [.. ShortOnes(falling.Count - runs.Count), .. SmallOnes(points, sign, threshold)],
        };
    }

    /// <summary>Long discharges of a current that counts as rest beside the largest of the log.</summary>
    private static IEnumerable<Finding> SmallOnes(List<RunPoint> points, int sign, double threshold) =>
        from span in Spans(points, sign, threshold * NoiseFraction)
        let rows = points[span.First..(span.Last + 1)]
        where rows.TrueForAll(row => row.Amperes * sign <= threshold)
            && rows[^1].Seconds - rows[0].Seconds >= Shortest.Seconds && rows[0].Volts - rows[^1].Volts >= LeastFall
        let amperes = rows.Average(row => row.Amperes * sign)
        select new Finding(
            "small-discharge-left-out", Severity.Caution, "log", FormattableString.Invariant($"{amperes:0.###} A"),
            FormattableString.Invariant($"From {rows[0].Seconds / 60:0} min on {amperes:0.###} A flow for {(rows[^1].Seconds - rows[0].Seconds) / 60:0} min while the volts fall by {rows[0].Volts - rows[^1].Volts:0.0} V, which counts as rest beside the largest current of {threshold / ThresholdFraction:0.#} A. If it is a discharge, fit it from a file of its own."));

    /// <summary>Volts and amperes at the instants of the volts; amperes between rows by straight lines.</summary>
    private static List<RunPoint> Joined(ImmutableArray<LogSample> samples)
    {
        var amperes = samples.Where(sample => sample.Amperes is not null).ToArray();
        var joined = new List<RunPoint>(samples.Length);
        var next = 0;
        foreach (var sample in samples)
        {
            if (sample.Volts is not { } volts)
                continue;
            while (next < amperes.Length && amperes[next].Seconds < sample.Seconds)
                next++;
            if (AmperesAt(amperes, next, sample.Seconds) is { } current)
                joined.Add(new RunPoint(sample.Seconds, volts, current));
        }

        return joined;
    }

    private static double? AmperesAt(LogSample[] amperes, int next, double seconds)
    {
        if (next < amperes.Length && amperes[next].Seconds <= seconds)
            return amperes[next].Amperes;
        if (next == 0 || next == amperes.Length)
            return null;
        var (before, after) = (amperes[next - 1], amperes[next]);
        var gap = after.Seconds - before.Seconds;
        return gap > LongestGap.Seconds
            ? null
            : before.Amperes + ((after.Amperes - before.Amperes) * (seconds - before.Seconds) / gap);
    }

    /// <summary>First and last index of the spans in which the current has one sign, short pauses bridged.</summary>
    private static List<(int First, int Last)> Spans(List<RunPoint> points, int sign, double threshold)
    {
        var spans = new List<(int First, int Last)>();
        for (var i = 0; i < points.Count; i++)
        {
            if (points[i].Amperes * sign <= threshold)
                continue;
            if (spans.Count > 0 && GoesOn(points, spans[^1].Last, i, sign, threshold))
                spans[^1] = (spans[^1].First, i);
            else
                spans.Add((i, i));
        }

        return spans;
    }

    private static bool GoesOn(List<RunPoint> points, int last, int next, int sign, double threshold)
    {
        for (var i = last + 1; i <= next; i++)
        {
            if (points[i].Seconds - points[i - 1].Seconds > LongestGap.Seconds || points[i].Amperes * sign < -threshold)
                return false;
        }

        return next == last + 1 || points[next].Seconds - points[last].Seconds <= LongestPause.Seconds;
    }

    /// <summary>Volts by which the spans fall together.</summary>
    private static double Fall(List<RunPoint> points, List<(int First, int Last)> spans) =>
        spans.Sum(span => points[span.First].Volts - points[span.Last].Volts);

    private static DischargeRun Run(
        int number, List<RunPoint> points, (int First, int Last) span, int sign, double threshold, ImmutableArray<LogSample> samples)
    {
        var start = points[span.First].Seconds;
        var end = points[span.Last].Seconds;
        var warm = samples.Where(sample => sample.Celsius is not null && sample.Seconds >= start && sample.Seconds <= end).ToList();
        return new DischargeRun
        {
            Number = number,
            Start = Duration.FromSeconds(start),
            Points = [.. points[span.First..(span.Last + 1)].Select(point => new RunPoint(point.Seconds - start, point.Volts, point.Amperes * sign))],
            RestVoltage = Rest(points, span.First, threshold) is { } volts ? Voltage.FromVolts(volts) : null,
            Temperature = warm.Count > 0 ? Temperature.FromCelsius(warm.Average(sample => sample.Celsius!.Value)) : null,
        };
    }

    private static ImmutableArray<DischargeRun> WithMissing(ImmutableArray<DischargeRun> runs, List<(int First, int Last)> spans, List<RunPoint> points, int sign) =>
    [
        .. runs.Select((run, i) => i > 0 && PutBack(points[spans[i - 1].Last..(spans[i].First + 1)], sign) is { } back && back < runs[i - 1].Delivered
            ? run with { Missing = runs[i - 1].Delivered - back }
            : run),
    ];

    /// <summary>Charge into the battery over some rows; <see langword="null"/> where a silence among them is too long to know.</summary>
    private static Charge? PutBack(List<RunPoint> rows, int sign)
    {
        double coulombs = 0;
        for (var i = 1; i < rows.Count; i++)
        {
            var seconds = rows[i].Seconds - rows[i - 1].Seconds;
            if (seconds > LongestGap.Seconds)
                return null;
            coulombs += seconds * (Math.Max(0, -rows[i - 1].Amperes * sign) + Math.Max(0, -rows[i].Amperes * sign)) / 2;
        }

        return Charge.FromCoulombs(coulombs);
    }

    private static double? Rest(List<RunPoint> points, int first, double threshold)
    {
        double? nearest = null;
        for (var i = first - 1; i >= 0 && Math.Abs(points[i].Amperes) <= threshold; i--)
        {
            nearest ??= points[i].Volts;
            if (points[first].Seconds - points[i].Seconds >= SecondsBeforeLoad)
                return points[i].Volts;
        }

        return nearest;
    }

    private static ImmutableArray<Finding> ShortOnes(int count) => count == 0
        ? []
        : [new Finding("short-loads-left-out", Severity.Information, "log", count.ToString(CultureInfo.InvariantCulture), FormattableString.Invariant($"{count} shorter than {Shortest.Minutes:0} min: switched loads rather than discharges; left out."))];
}
