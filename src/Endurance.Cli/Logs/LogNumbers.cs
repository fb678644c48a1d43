using System.Globalization;
using Endurance.Yaml.Diagnostics;

namespace Endurance.Cli.Logs;

/// <summary>Numbers of one log: a decimal point or a decimal comma, the same one throughout.</summary>
internal sealed class LogNumbers
{
    private const NumberStyles Style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    private char? _sign;

    /// <summary><see langword="null"/> and a message when the text is no finite number.</summary>
    public double? Read(string text, string what, out string fault)
    {
        fault = $"{Quoted.Of(text)} is not {what}";
        var (points, commas) = (text.Count(letter => letter == '.'), text.Count(letter => letter == ','));
        if (points + commas > 1)
            return null;
        if (points + commas == 1)
        {
            var sign = points == 1 ? '.' : ',';
            _sign ??= sign;
            if (_sign != sign)
            {
                fault = $"{Quoted.Of(text)} has a decimal {Name(sign)} where earlier numbers have a decimal {Name(_sign.Value)}";
                return null;
            }
        }

        return double.TryParse(text.Replace(',', '.'), Style, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : null;
    }

    private static string Name(char sign) => sign == '.' ? "point" : "comma";
}
