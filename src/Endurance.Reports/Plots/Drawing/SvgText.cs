using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;

namespace Endurance.Reports.Plots;

/// <summary>Makes the SVG of one drawing independent of what the process drew before.</summary>
internal static partial class SvgText
{
    /// <summary>Renumbers identifiers from one, rounds coordinates to a hundredth of a pixel, and adds text and a title for screen readers.</summary>
    /// <param name="svg">The shapes.</param>
    /// <param name="text">Elements to follow them.</param>
    /// <param name="title">Any characters.</param>
    public static string Settled(string svg, string text, string title)
    {
        var numbers = new Dictionary<string, string>(StringComparer.Ordinal);
        string Renumbered(Match match)
        {
            if (!numbers.TryGetValue(match.Groups["id"].Value, out var number))
            {
                number = "c" + (numbers.Count + 1).ToString(CultureInfo.InvariantCulture);
                numbers.Add(match.Groups["id"].Value, number);
            }

            return match.Groups["before"].Value + number + match.Groups["after"].Value;
        }

        var settled = Identifier().Replace(SvgNumbers.Rounded(svg), Renumbered);
        var start = settled.IndexOf("<svg", StringComparison.Ordinal);
        var inside = settled.IndexOf('>', start) + 1;
        var end = settled.LastIndexOf("</svg>", StringComparison.Ordinal);
        return string.Concat(settled.AsSpan(..inside), $"\n\t<title>{WebUtility.HtmlEncode(VisibleText.Of(title))}</title>", settled.AsSpan(inside..end), $"{text}</svg>\n");
    }

    [GeneratedRegex("""(?<before>id="|url\(#|href="#)(?<id>[^")]+)(?<after>"|\))""", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Identifier();
}
