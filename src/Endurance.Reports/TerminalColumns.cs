namespace Endurance.Reports;

/// <summary>Shares the width of a terminal among the columns of a table so that words, and names above all, stay whole where they can.</summary>
internal static class TerminalColumns
{
    /// <summary>Blanks after each column.</summary>
    public const int Gap = 2;

    private const int LongestUnit = 5;

    /// <summary>One width a column; <see langword="null"/> when not even the longest words fit side by side.</summary>
    public static int[]? Widths(ReportTable table, int available)
    {
        var texts = table.Columns.Select((_, i) => table.Rows.Select(row => VisibleText.Of(row[i].Text)).ToArray()).ToArray();
        var cells = texts.Select(column => column.Select(text => text.Length).DefaultIfEmpty(0).Max()).ToArray();
        var whole = table.Columns.Select((column, i) => Math.Max(cells[i], column.Label.Length)).ToArray();
        var room = available - (Gap * (whole.Length + 1));
        if (whole.Sum() <= room)
            return whole;
        var widths = table.Columns.Select((column, i) => texts[i].Append(column.Label).Max(LongestWord)).ToArray();
        if (widths.Sum() > room)
            return null;
        for (var spare = room - widths.Sum(); spare > 0; spare--)
        {
            // Headings wrap before cells do.
            var cramped = MostCramped(widths, cells);
            if (widths[cramped] >= cells[cramped])
                cramped = MostCramped(widths, whole);
            widths[cramped]++;
        }

        return widths;
    }

    private static int MostCramped(int[] widths, int[] widest)
    {
        var most = 0;
        for (var i = 1; i < widths.Length; i++)
        {
            if (widest[i] - widths[i] > widest[most] - widths[most])
                most = i;
        }

        return most;
    }

    /// <summary>A short cell that is a number and its unit counts as one word.</summary>
    private static int LongestWord(string text)
    {
        var words = text.Split(' ');
        return words is [[.., _] number, { Length: <= LongestUnit }] && char.IsAsciiDigit(number[^1]) ? text.Length : words.Max(word => word.Length);
    }
}
