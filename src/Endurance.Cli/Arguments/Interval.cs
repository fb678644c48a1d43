using System.CommandLine.Parsing;
using Endurance.Quantities;

namespace Endurance.Cli.Arguments;

/// <summary>Times typed on the command line: a number and one of s, min, h.</summary>
internal static class Interval
{
    /// <summary>For an option that takes a time above zero.</summary>
    public static Func<ArgumentResult, Duration> AboveZero(string option) => result =>
    {
        var text = result.Tokens[0].Value;
        var time = Read(text, out var fault);
        if (time is null)
            result.AddError($"{option}: {fault}.");
        else if (time <= Duration.Zero)
            result.AddError($"{option}: '{text}' is not above zero.");

        return time ?? Duration.Zero;
    };

    /// <summary><see langword="null"/> and a message when the text is no time.</summary>
    public static Duration? Read(string text, out string? fault)
    {
        var trimmed = text.Trim();
        var unit = string.Concat(trimmed.Reverse().TakeWhile(char.IsLetter).Reverse());
        double? perUnit = unit switch
        {
            "s" => 1,
            "min" => 60,
            "h" => 3600,
            _ => null,
        };
        var number = DecimalNumber.Read(trimmed[..^unit.Length].TrimEnd(), out fault);
        if (number is null)
            return null;

        if (perUnit is null)
        {
            fault = unit.Length == 0
                ? $"'{text}' has no unit; expected s, min or h, as in \"{text} s\""
                : $"'{unit}' is not a unit of time; expected s, min or h";
            return null;
        }

        var seconds = number.Value * perUnit.Value;
        if (double.IsFinite(seconds))
            return Duration.FromSeconds(seconds);

        fault = $"'{text}' is too long";
        return null;
    }
}
