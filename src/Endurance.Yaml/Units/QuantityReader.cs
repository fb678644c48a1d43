using System.Globalization;
using Endurance.Scenarios;
using Endurance.Yaml.Diagnostics;

namespace Endurance.Yaml.Units;

/// <summary>Reads a number and its unit: the unit is compulsory, case-sensitive and from a closed list; the space is optional.</summary>
internal static class QuantityReader
{
    /// <summary>The value in SI, checked against the range.</summary>
    public static QuantityReading Read(string text, QuantityRange range)
    {
        text = text.Trim();
        var number = NumberPart(text);
        if (number.Length == 0)
            return NoNumber(text, range);
        var rest = text[number.Length..];
        if (rest.StartsWith(',') && rest.Length > 1 && char.IsAsciiDigit(rest[1]))
            return QuantityReading.Wrong("decimal-comma", $"{Quoted.Of(text)} has a decimal comma", WithoutComma(text));
        var unit = UnitSymbols.Normalised(rest.Trim());
        if (range.Dimension.Units.IsEmpty)
        {
            return unit.Length == 0
                ? InRange(text, number, new Unit("", 1), range)
                : QuantityReading.Wrong("unexpected-unit", $"{Quoted.Of(text)} is not a bare number", $"{range.Dimension.Name} without a unit, such as {range.Example}");
        }

        if (unit.Any(char.IsAsciiDigit))
            return NoNumber(text, range);
        if (unit.Length == 0)
            return QuantityReading.Wrong("missing-unit", $"{Quoted.Of(text)} has no unit", Expected(range));
        return range.Dimension.Find(unit) is { } known
            ? InRange(text, number, known, range)
            : WrongUnit(text, unit, range, at: text.Length - rest.TrimStart().Length);
    }

    /// <summary>What the range takes, with its units and an example.</summary>
    public static string Expected(QuantityRange range) => range.Dimension.Units.IsEmpty
        ? $"{range.Dimension.Name}, such as {range.Example}"
        : $"{range.Dimension.Name} in {range.Dimension.ListedUnits}, such as {range.Example}";

    private static string NumberPart(string text)
    {
        var at = text is ['+' or '-', ..] ? 1 : 0;
        var digits = Digits(text, at);
        var end = at + digits;
        if (end < text.Length && text[end] == '.')
        {
            var decimals = Digits(text, end + 1);
            digits += decimals;
            end += decimals > 0 || digits > 0 ? decimals + 1 : 0;
        }

        if (digits == 0)
            return "";
        if (end < text.Length && text[end] is 'e' or 'E')
        {
            var signed = end + 1 < text.Length && text[end + 1] is '+' or '-' ? end + 2 : end + 1;
            var power = Digits(text, signed);
            end = power > 0 ? signed + power : end;
        }

        return text[..end];
    }

    private static int Digits(string text, int from)
    {
        var count = 0;
        while (from + count < text.Length && char.IsAsciiDigit(text[from + count]))
            count++;
        return count;
    }

    private static QuantityReading InRange(string text, string number, Unit unit, QuantityRange range)
    {
        var si = unit.ToSi(double.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture));
        if (!double.IsFinite(si))
            return QuantityReading.Wrong("number-not-finite", $"{Quoted.Of(text)} is too large for a number", $"{range.Dimension.Name} {range.InWords}");
        if (range.Contains(si))
            return QuantityReading.Of(si);
        return QuantityReading.Wrong("out-of-range", $"{Quoted.Of(text)} is {Side(si, range)}", $"{range.Dimension.Name} {range.InWords}");
    }

    private static string Side(double si, QuantityRange range)
    {
        if (range.IsAboveMost(si))
            return "too large";
        if (range.Least < 0 || range.Dimension == Dimension.Temperature)
            return "too small";
        return si switch { 0 => "zero", < 0 => "negative", _ => "too small" };
    }

    private static QuantityReading NoNumber(string text, QuantityRange range)
    {
        var word = text.TrimStart('+', '-', '.').ToLowerInvariant();
        return word.StartsWith("nan", StringComparison.Ordinal) || word.StartsWith("inf", StringComparison.Ordinal)
            ? QuantityReading.Wrong("number-not-finite", $"{Quoted.Of(text)} is not a finite number", Expected(range))
            : QuantityReading.Wrong("not-a-quantity", $"{Quoted.Of(text)} is not {range.Dimension.Name}", Expected(range));
    }

    private static QuantityReading WrongUnit(string text, string unit, QuantityRange range, int at)
    {
        var other = Dimension.All.FirstOrDefault(dimension => dimension.Find(unit) is not null);
        return other is not null
            ? QuantityReading.Wrong("wrong-unit", $"{Quoted.Of(text)} is {other.Name}, not {range.Dimension.Name}", Expected(range), UnitSymbols.MeantBy(unit, range.Dimension), at)
            : QuantityReading.Wrong("unknown-unit", $"{Quoted.Of(unit)} is not a unit of {range.Dimension.Name}", Expected(range), NearestUnit(unit, range.Dimension), at);
    }

    /// <summary>A prefix that the list does not have means a thousandfold or more, so that no unit of the list is near.</summary>
    private static string? NearestUnit(string unit, Dimension dimension) => unit is ['k' or 'M' or 'G', .. var prefixed] && dimension.Find(prefixed) is not null ? null :
        dimension.Units.FirstOrDefault(known => string.Equals(known.Symbol, unit, StringComparison.OrdinalIgnoreCase))?.Symbol
        ?? UnitSymbols.MeantBy(unit, dimension)
        ?? (unit.Length > 2 ? NearestName.Find(unit, dimension.Units.Where(known => known.Symbol.Length > 2).Select(known => known.Symbol)) : null);

    /// <summary>The text with a point; three digits behind the comma may be thousands as well.</summary>
    private static string WithoutComma(string text)
    {
        var comma = text.IndexOf(',', StringComparison.Ordinal);
        var (before, after) = (text[..comma], text[(comma + 1)..]);
        var point = $"a decimal point: {Quoted.Shortened($"{before}.{after}")}";
        return Digits(text, comma + 1) == 3 ? $"{point}; or, for thousands, no comma: {Quoted.Shortened(before + after)}" : point;
    }
}
