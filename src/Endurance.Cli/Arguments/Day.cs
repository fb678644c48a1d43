using System.CommandLine.Parsing;
using System.Globalization;

namespace Endurance.Cli.Arguments;

/// <summary>Days on the command line, year first, so that no day can be read as a month.</summary>
internal static class Day
{
    public static Func<ArgumentResult, DateOnly?> Of(string option) => result =>
    {
        var text = result.Tokens[0].Value;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
            return day;
        result.AddError($"{option}: '{text}' is not a day such as 2026-05-02.");
        return null;
    };
}
