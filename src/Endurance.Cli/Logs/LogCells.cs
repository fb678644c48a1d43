using System.Collections.Immutable;
using System.Globalization;
using Endurance.Yaml.Diagnostics;

namespace Endurance.Cli.Logs;

/// <summary>Reads the cells of the rows of one log; what the first rows show (timestamps, decimal sign) holds for all.</summary>
internal sealed class LogCells(ImmutableDictionary<LogSignal, LogColumn> columns, DiagnosticList diagnostics)
{
    private readonly LogNumbers _numbers = new();
    private bool? _isInstant;
    private bool? _hasZone;
    private bool _isUnitReported;

    /// <returns><see langword="null"/> after an error, or when the row holds nothing.</returns>
    public LogRow? Read(string[] cells, LogLine line)
    {
        var volts = Value(LogSignal.Volts, cells, line);
        var amperes = Value(LogSignal.Amperes, cells, line);
        var celsius = columns.ContainsKey(LogSignal.Celsius) ? Value(LogSignal.Celsius, cells, line) : Reading.Empty;
        var column = columns[LogSignal.Time].Index;
        if (cells[column].Length == 0)
        {
            if (!volts.IsEmpty || !amperes.IsEmpty || !celsius.IsEmpty)
                diagnostics.Error("time-missing", line.Cell(column), "this line has values but no time", $"a time, such as {LogSignal.Time.Example}");
            return null;
        }

        var seconds = Seconds(cells[column], line, column);
        return seconds is null || volts.IsFaulty || amperes.IsFaulty || celsius.IsFaulty
            ? null
            : new LogRow(line.Number, seconds.Value, _isInstant == true, volts.Number, amperes.Number, celsius.Number);
    }

    private double? Seconds(string text, LogLine line, int column)
    {
        if (LogTimestamp.Seconds(text) is { } instant)
            return Instant(text, instant, line, column);
        if (columns[LogSignal.Time].Factor is not { } factor)
            return WithoutUnit(text, line, column);
        if (_numbers.Read(text, "a time", out var fault) is { } number && _isInstant != true)
        {
            _isInstant = false;
            return number * factor;
        }

        diagnostics.Error("not-a-time", line.Cell(column), fault, _isInstant == true ? $"a timestamp, such as {LogSignal.Time.Example}" : "a number in the unit of the heading, such as 12.5");
        return null;
    }

    private double? Instant(string text, double instant, LogLine line, int column)
    {
        var hasZone = LogTimestamp.HasZone(text);
        _hasZone ??= hasZone;
        if (_isInstant == false)
            diagnostics.Error("not-a-time", line.Cell(column), $"{Quoted.Of(text)} is a timestamp where earlier lines have numbers", "a number in the unit of the heading");
        else if (_hasZone != hasZone)
            diagnostics.Error("time-zone", line.Cell(column), $"{Quoted.Of(text)} {(hasZone ? "names" : "does not name")} its time zone, unlike earlier lines", "timestamps all with their zone, or all without");
        else
            return Told(instant);
        return null;
    }

    private double Told(double instant)
    {
        _isInstant = true;
        return instant;
    }

    /// <summary>Said once: the same is wrong with every line.</summary>
    private double? WithoutUnit(string text, LogLine line, int column)
    {
        var isNumber = _isInstant is null && _numbers.Read(text, "a time", out _) is not null;
        if (isNumber && !_isUnitReported)
            diagnostics.Error("time-without-unit", line.Cell(column), $"{Quoted.Of(text)} is a number, and the heading does not say whether it is seconds, minutes or hours", "a heading with the unit, such as time_s, time_min or time_h");
        else if (!isNumber)
            diagnostics.Error("not-a-time", line.Cell(column), $"{Quoted.Of(text)} is not a time", $"a timestamp, such as {LogSignal.Time.Example}");
        _isUnitReported |= isNumber;
        return null;
    }

    private Reading Value(LogSignal signal, string[] cells, LogLine line)
    {
        var column = columns[signal];
        var text = cells[column.Index];
        if (text.Length == 0)
            return Reading.Empty;
        var expected = $"a number such as {signal.Example}, or an empty cell";
        if (_numbers.Read(text, signal.Name, out var fault) is not { } number)
        {
            diagnostics.Error("not-a-number", line.Cell(column.Index), fault, expected);
            return Reading.Faulty;
        }

        var value = column.Factor switch
        {
            null => number,
            LogSignal.Fahrenheit => (number - 32) * 5 / 9,
            { } factor => number * factor,
        };
        if (value >= signal.Least && value <= signal.Most)
            return new Reading(value, IsFaulty: false);
        diagnostics.Error("out-of-range", line.Cell(column.Index), $"{Quoted.Of(text)} is outside what {signal.Name} of a battery can be", string.Create(CultureInfo.InvariantCulture, $"{signal.Least} to {signal.Most}"));
        return Reading.Faulty;
    }

    private readonly record struct Reading(double? Number, bool IsFaulty)
    {
        public static Reading Empty => default;

        public static Reading Faulty => new(null, IsFaulty: true);

        public bool IsEmpty => Number is null && !IsFaulty;
    }
}
