using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text;

namespace Endurance.Reports;

/// <summary>Text for terminals and printers that know ASCII alone: signs are spelt out, letters lose their accents.</summary>
public static class AsciiText
{
    private static readonly FrozenDictionary<int, string> Spelt = new (string Signs, string Ascii)[]
    {
        ("\u03A9\u2126", "ohm"), ("\u00B0", "deg"), ("\u00B5\u03BC", "u"), ("\u00B1", "+-"), ("\u2212\u2010\u2011\u2012\u2013\u2014\u2500\u2501", "-"),
        ("\u00D7", "x"), ("\u00B7\u2022", "*"), ("\u2026", "..."), ("\u2264", "<="), ("\u2265", ">="), ("\u2192", "->"), ("\u2190", "<-"), ("\u2502", "|"),
        ("\u2018\u2019\u201A\u2032", "'"), ("\u201C\u201D\u201E\u2033", "\""), ("\u00AB", "<<"), ("\u00BB", ">>"), ("\u00A0\u202F\u2009", " "), ("\u20AC", "EUR"),
        ("\u00E0\u00E1\u00E2\u00E3\u00E4\u00E5\u0101\u0103\u0105", "a"), ("\u00C0\u00C1\u00C2\u00C3\u00C4\u00C5\u0100\u0102\u0104", "A"), ("\u00E6", "ae"), ("\u00C6", "AE"),
        ("\u00E7\u0107\u010D", "c"), ("\u00C7\u0106\u010C", "C"), ("\u010F\u0111", "d"), ("\u010E\u0110", "D"),
        ("\u00E8\u00E9\u00EA\u00EB\u0113\u0117\u0119\u011B", "e"), ("\u00C8\u00C9\u00CA\u00CB\u0112\u0116\u0118\u011A", "E"), ("\u011F", "g"), ("\u011E", "G"),
        ("\u00EC\u00ED\u00EE\u00EF\u012B\u012F\u0131", "i"), ("\u00CC\u00CD\u00CE\u00CF\u012A\u012E\u0130", "I"), ("\u0142", "l"), ("\u0141", "L"),
        ("\u00F1\u0144\u0148", "n"), ("\u00D1\u0143\u0147", "N"), ("\u00F2\u00F3\u00F4\u00F5\u00F6\u00F8\u014D\u0151", "o"), ("\u00D2\u00D3\u00D4\u00D5\u00D6\u00D8\u014C\u0150", "O"),
        ("\u0153", "oe"), ("\u0152", "OE"), ("\u0159", "r"), ("\u0158", "R"), ("\u00DF", "ss"), ("\u015B\u015F\u0161", "s"), ("\u015A\u015E\u0160", "S"), ("\u0165", "t"), ("\u0164", "T"),
        ("\u00F9\u00FA\u00FB\u00FC\u016B\u016F\u0171\u0173", "u"), ("\u00D9\u00DA\u00DB\u00DC\u016A\u016E\u0170\u0172", "U"), ("\u00FD\u00FF", "y"), ("\u00DD", "Y"),
        ("\u017A\u017C\u017E", "z"), ("\u0179\u017B\u017D", "Z"),
    }.SelectMany(entry => entry.Signs.Select(sign => ((int)sign, entry.Ascii))).ToFrozenDictionary(pair => pair.Item1, pair => pair.Ascii);

    /// <summary>What has no spelling becomes a question mark.</summary>
    public static string Of(string text)
    {
        if (Ascii.IsValid(text))
            return text;
        var ascii = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
            ascii.Append(rune.IsAscii ? ((char)rune.Value).ToString() : Spelt.GetValueOrDefault(rune.Value, "?"));

        return ascii.ToString();
    }

    /// <summary>A whole report, before its columns are measured.</summary>
    public static ReportDocument Of(ReportDocument document) => new(Of(document.Title), [.. document.Blocks.Select(Of)]);

    private static ReportBlock Of(ReportBlock block) => block switch
    {
        ReportHeading heading => new ReportHeading(Of(heading.Text)),
        ReportParagraph paragraph => new ReportParagraph(Of(paragraph.Text)),
        ReportList list => new ReportList(Of(list.Title), [.. list.Items.Select(Of)]),
        ReportCode code => code with { Title = Of(code.Title), Text = Of(code.Text) },
        ReportTable table => new ReportTable(
            Of(table.Title),
            [.. table.Columns.Select(column => column with { Heading = Of(column.Heading), Unit = column.Unit is { } unit ? Of(unit) : null })],
            [.. table.Rows.Select(row => row.Select(cell => cell with { Text = Of(cell.Text) }).ToImmutableArray())]),
        _ => throw new ArgumentOutOfRangeException(nameof(block), block, "Unknown kind of block."),
    };
}
