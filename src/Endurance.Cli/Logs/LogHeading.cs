using System.Collections.Immutable;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;

namespace Endurance.Cli.Logs;

/// <summary>Finds the columns of a log by their headings.</summary>
internal static class LogHeading
{
    /// <returns>Time, volts, amperes and, where there is one, temperature; <see langword="null"/> after errors.</returns>
    public static ImmutableDictionary<LogSignal, LogColumn>? Read(IReadOnlyList<string> cells, LogLine line, DiagnosticList diagnostics)
    {
        var found = ImmutableDictionary.CreateBuilder<LogSignal, LogColumn>();
        var isFaulty = false;
        for (var i = 0; i < cells.Count; i++)
        {
            var words = Words(cells[i]);
            if (LogSignal.All.FirstOrDefault(signal => signal.IsNamedBy(words)) is not { } signal)
                continue;
            if (found.TryGetValue(signal, out var earlier))
            {
                diagnostics.Error("column-twice", line.Cell(i), $"{Quoted.Of(cells[i])} is {signal.Name}, and so is {Quoted.Of(cells[earlier.Index])}", Once(signal));
                isFaulty = true;
                continue;
            }

            found.Add(signal, new LogColumn(signal, i, signal.UnitIn(words)));
        }

        foreach (var missing in LogSignal.All.Where(signal => signal != LogSignal.Celsius && !found.ContainsKey(signal)))
        {
            diagnostics.Error("column-missing", line.Whole, $"no column is headed as {missing.Name}", $"a column headed {missing.Heading}");
            isFaulty = true;
        }

        return isFaulty ? null : found.ToImmutable();
    }

    private static string Once(LogSignal signal) => signal == LogSignal.Time
        ? "one time column; date and time of day belong into one"
        : $"one column headed {signal.Heading}; rename or delete the others";

    private static ImmutableArray<string> Words(string heading)
    {
        var letters = heading.ToLowerInvariant().Select(letter => char.IsLetterOrDigit(letter) ? letter : ' ').ToArray();
        return [.. new string(letters).Split(' ', StringSplitOptions.RemoveEmptyEntries)];
    }
}
