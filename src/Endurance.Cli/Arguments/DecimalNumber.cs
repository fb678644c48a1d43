using System.CommandLine.Parsing;
using System.Globalization;

namespace Endurance.Cli.Arguments;

/// <summary>Numbers typed on the command line: a decimal point, never a comma, never grouped.</summary>
internal static class DecimalNumber
{
    private const NumberStyles Style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    /// <summary><see langword="null"/> and a message when the text is no finite number.</summary>
    public static double? Read(string text, out string? fault)
    {
        fault = null;
        if (text.Contains(','))
        {
            fault = $"'{text}' has a comma; the decimal sign is a point, as in {text.Replace(',', '.')}";
            return null;
        }

        if (double.TryParse(text, Style, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number))
            return number;

        fault = $"'{text}' is not a number";
        return null;
    }

    /// <summary>For an option that takes a number from a range, both ends included.</summary>
    public static Func<ArgumentResult, double> Between(string option, double lowest, double highest) => result =>
    {
        var text = result.Tokens[0].Value;
        var number = Read(text, out var fault);
        if (number is null)
            result.AddError($"{option}: {fault}.");
        else if (number < lowest || number > highest)
            result.AddError($"{option}: '{text}' is outside {Short(lowest)} to {Short(highest)}.");

        return number ?? lowest;
    };

    private static string Short(double number) => number.ToString("0.##e-0", CultureInfo.InvariantCulture);
}
