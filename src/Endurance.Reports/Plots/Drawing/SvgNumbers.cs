using System.Globalization;
using System.Text;

namespace Endurance.Reports.Plots;

/// <summary>Shortens the numbers of a drawing, most of which are coordinates of outlines.</summary>
internal static class SvgNumbers
{
    private const int FewestDecimals = 3;

    /// <summary>Rounds every number of three decimals or more to two, a half away from zero, without trailing zeros.</summary>
    public static string Rounded(string svg)
    {
        var text = svg.AsSpan();
        var rounded = new StringBuilder(svg.Length);
        var at = 0;
        for (var dot = text.IndexOf('.'); dot >= 0; dot = Next(text, at))
        {
            var end = dot + 1 + Digits(text[(dot + 1)..]);
            var start = dot;
            while (start > at && char.IsAsciiDigit(text[start - 1]))
                start--;
            if (start < dot && end - dot > FewestDecimals)
            {
                start -= start > at && text[start - 1] == '-' ? 1 : 0;
                rounded.Append(text[at..start]);
                at = dot;
                end += Exponent(text[end..]);
                Append(rounded, text[start..end], dot - start);
            }
            else
            {
                rounded.Append(text[at..end]);
            }

            at = end;
        }

        return rounded.Append(text[at..]).ToString();
    }

    private static int Next(ReadOnlySpan<char> text, int at)
    {
        var next = text[at..].IndexOf('.');
        return next < 0 ? -1 : at + next;
    }

    private static int Digits(ReadOnlySpan<char> text)
    {
        var other = text.IndexOfAnyExceptInRange('0', '9');
        return other < 0 ? text.Length : other;
    }

    private static int Exponent(ReadOnlySpan<char> text)
    {
        if (text is not ['e', ..])
            return 0;
        var sign = text is ['e', '-', ..] ? 2 : 1;
        var digits = Digits(text[sign..]);
        return digits == 0 ? 0 : sign + digits;
    }

    private static void Append(StringBuilder rounded, ReadOnlySpan<char> number, int dot)
    {
        if (dot > 9 || number.Contains('e'))
        {
            rounded.Append(RoundedNumber.Short(double.Parse(number, CultureInfo.InvariantCulture), 2));
            return;
        }

        var isNegative = number[0] == '-';
        var hundredths = 0L;
        foreach (var digit in number[(isNegative ? 1 : 0)..dot])
            hundredths = (hundredths * 10) + (digit - '0');
        hundredths = (hundredths * 100) + ((number[dot + 1] - '0') * 10) + (number[dot + 2] - '0') + (number[dot + 3] >= '5' ? 1 : 0);
        if (isNegative && hundredths > 0)
            rounded.Append('-');
        rounded.Append(hundredths / 100);
        if (hundredths % 100 == 0)
            return;
        rounded.Append('.').Append((char)('0' + (hundredths % 100 / 10)));
        if (hundredths % 10 != 0)
            rounded.Append((char)('0' + (hundredths % 10)));
    }
}
