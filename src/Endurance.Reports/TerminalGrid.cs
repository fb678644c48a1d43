using Spectre.Console.Rendering;

namespace Endurance.Reports;

/// <summary>Sets cells side by side in columns of fixed width.</summary>
/// <param name="page">Takes the lines.</param>
/// <param name="widths">Of the columns.</param>
/// <param name="areNumbers">Whether a column is set to the right.</param>
internal sealed class TerminalGrid(List<Segment> page, int[] widths, bool[] areNumbers)
{
    private const int Edge = 1;

    public void AddRow(IEnumerable<IReadOnlyList<TerminalLine>> row)
    {
        var cells = row.ToArray();
        var height = cells.Max(cell => cell.Count);
        for (var i = 0; i < height; i++)
        {
            AddBlanks(Edge);
            for (var column = 0; column < cells.Length; column++)
            {
                var line = i < cells[column].Count ? cells[column][i] : new TerminalLine([], Width: 0);
                var spare = Math.Max(0, widths[column] - line.Width);
                AddBlanks(areNumbers[column] ? spare : 0);
                page.AddRange(line.Segments);
                AddBlanks(TerminalColumns.Gap + (areNumbers[column] ? 0 : spare));
            }

            page.Add(Segment.LineBreak);
        }
    }

    public void AddRule(char stroke)
    {
        page.Add(new Segment(new string(stroke, Edge + widths.Sum() + (TerminalColumns.Gap * widths.Length))));
        page.Add(Segment.LineBreak);
    }

    private void AddBlanks(int count)
    {
        if (count > 0)
            page.Add(Segment.Padding(count));
    }
}
