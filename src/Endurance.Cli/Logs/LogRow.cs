namespace Endurance.Cli.Logs;

/// <summary>One row of a log as written.</summary>
/// <param name="Line">Of the file.</param>
/// <param name="Seconds">On the scale of the log.</param>
/// <param name="IsInstant">Whether the time was a timestamp; otherwise it may start over with another recording.</param>
/// <param name="Volts">Absent when the cell is empty.</param>
/// <param name="Amperes">Absent when the cell is empty.</param>
/// <param name="Celsius">Absent when the cell is empty.</param>
internal readonly record struct LogRow(int Line, double Seconds, bool IsInstant, double? Volts, double? Amperes, double? Celsius);
