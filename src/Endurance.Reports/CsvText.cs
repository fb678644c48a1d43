using System.Buffers;
using Endurance.Quantities;
using Endurance.Simulation;

namespace Endurance.Reports;

/// <summary>Cells of comma-separated text.</summary>
internal static class CsvText
{
    public const string LineEnd = "\r\n";
    private const int NumberDecimals = 4;
    private static readonly SearchValues<char> NeedsQuotes = SearchValues.Create(",\"\r\n");

    /// <summary>Text that a person typed, so that a spreadsheet shows it and never runs it.</summary>
    /// <remarks>Spreadsheets take a cell that starts with one of these characters for a formula; an apostrophe in front makes it text.</remarks>
    public static string FromPerson(string text) =>
        text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r' or '\n' ? Quoted("'" + text) : Quoted(text);

    /// <summary>The parts that kept a case from being computed to its end, parted by blanks; empty where it was.</summary>
    public static string Chattering(BreakOff? breakOff) => breakOff is null ? "" : FromPerson(string.Join(' ', breakOff.Parts));

    /// <summary>Empty where there is none.</summary>
    public static string Number(double? value) => value is { } number ? RoundedNumber.Short(number, NumberDecimals) : "";

    /// <summary>Empty where a time is not reached.</summary>
    public static string Minutes(Duration? time) => Number(time?.Minutes);

    public static string YesNo(bool value) => value ? "yes" : "no";

    /// <summary>Quoted where RFC 4180, section 2, asks for it.</summary>
    public static string Quoted(string text) =>
        text.AsSpan().ContainsAny(NeedsQuotes) ? "\"" + text.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"" : text;
}
