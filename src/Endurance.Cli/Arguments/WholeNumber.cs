using System.CommandLine.Parsing;
using System.Globalization;

namespace Endurance.Cli.Arguments;

/// <summary>Whole numbers typed on the command line: digits alone.</summary>
internal static class WholeNumber
{
    /// <summary>For an option that takes a number from a range, both ends included.</summary>
    public static Func<ArgumentResult, int> Between(string option, int lowest, int highest) => result =>
    {
        var text = result.Tokens[0].Value;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= lowest && number <= highest)
            return number;
        result.AddError(string.Create(CultureInfo.InvariantCulture, $"{option}: '{text}' is not a whole number from {lowest} to {highest}."));
        return lowest;
    };
}
