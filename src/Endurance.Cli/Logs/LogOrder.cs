using System.Collections.Immutable;
using System.Globalization;
using Endurance.Findings;
using Endurance.Studies.BatteryFit;

namespace Endurance.Cli.Logs;

/// <summary>Puts the rows of a log in order of time, one row an instant.</summary>
internal static class LogOrder
{
    /// <summary>Between recordings that each start at zero; long enough that nothing is taken to go on across it.</summary>
    private const double SecondsBetweenRecordings = 24 * 3600;

    /// <summary>A clock that goes back earlier than this is out of order rather than started over.</summary>
    private const int FewestRowsOfRecording = 10;

    /// <summary>Of the recording so far; a clock set back by less is out of order.</summary>
    private const double NearStart = 0.5;

    /// <param name="rows">As written; at least one.</param>
    public static (ImmutableArray<LogSample> Samples, ImmutableArray<Finding> Notes) Of(List<LogRow> rows)
    {
        var (placed, restarts) = WithRecordingsApart(rows);
        var outOfOrder = placed.Zip(placed.Skip(1)).Count(pair => pair.Second.Seconds < pair.First.Seconds);
        var samples = new List<LogSample>(placed.Count);
        var repeated = 0;
        foreach (var sample in placed.OrderBy(sample => sample.Seconds))
        {
            if (samples.Count > 0 && sample.Seconds <= samples[^1].Seconds)
            {
                repeated++;
                var before = samples[^1];
                samples[^1] = new LogSample(before.Seconds, sample.Volts ?? before.Volts, sample.Amperes ?? before.Amperes, sample.Celsius ?? before.Celsius);
            }
            else
            {
                samples.Add(sample);
            }
        }

        var zero = samples[0].Seconds;
        return ([.. samples.Select(sample => sample with { Seconds = sample.Seconds - zero })], Notes(outOfOrder, repeated, restarts));
    }

    private static (List<LogSample> Placed, List<int> Restarts) WithRecordingsApart(List<LogRow> rows)
    {
        var placed = new List<LogSample>(rows.Count);
        var restarts = new List<int>();
        double offset = 0, first = rows[0].Seconds, last = first;
        var count = 0;
        foreach (var (i, row) in rows.Index())
        {
            if (!row.IsInstant && count >= FewestRowsOfRecording && last > first && StartsOver(rows, i, first, last))
            {
                offset += last - row.Seconds + SecondsBetweenRecordings;
                restarts.Add(row.Line);
                (first, last, count) = (row.Seconds, row.Seconds, 0);
            }

            last = Math.Max(last, row.Seconds);
            count++;
            placed.Add(new LogSample(row.Seconds + offset, row.Volts, row.Amperes, row.Celsius));
        }

        return (placed, restarts);
    }

    /// <summary>Back to the first time; or, since a logger need not begin at zero, well back and rising from there, which a row in the wrong place does not.</summary>
    private static bool StartsOver(List<LogRow> rows, int at, double first, double last)
    {
        if (rows[at].Seconds <= first)
            return true;
        if (rows[at].Seconds - first >= NearStart * (last - first) || rows.Count - at < FewestRowsOfRecording)
            return false;
        var next = rows.GetRange(at, FewestRowsOfRecording);
        return next[1].Seconds < last && next.Zip(next.Skip(1)).All(pair => pair.First.Seconds < pair.Second.Seconds);
    }

    private static ImmutableArray<Finding> Notes(int outOfOrder, int repeated, List<int> restarts)
    {
        IEnumerable<Finding?> notes =
        [
            outOfOrder == 0 ? null : Note("rows-out-of-order", outOfOrder, $"{(outOfOrder == 1 ? "1 row stands" : $"{outOfOrder} rows stand")} before an earlier one; all are sorted by time. If two recordings are mixed in the file, nothing of this fit holds: part them.") with { Severity = Severity.Caution },
            repeated == 0 ? null : Note("times-repeated", repeated, $"{(repeated == 1 ? "1 row repeats" : $"{repeated} rows repeat")} a time; of two values the later line counts."),
            restarts.Count == 0 ? null : Note("time-starts-over", restarts.Count, $"The time starts over at line {string.Join(", ", restarts)}: each is taken for another recording."),
        ];
        return [.. notes.OfType<Finding>()];
    }

    private static Finding Note(string code, int count, string message) =>
        new(code, Severity.Information, "log", count.ToString(CultureInfo.InvariantCulture), message);
}
