using Endurance.Scenarios;
using Endurance.Yaml.Diagnostics;

namespace Endurance.Cli.Logs;

/// <summary>Where the columns of a card stand; from zero, -1 where there is none.</summary>
internal sealed record CardColumns
{
    private static readonly string[] Required = ["point", "quantity", "measured"];

    private CardColumns(IReadOnlyList<string> headings)
    {
        int At(string heading) => headings.ToList().FindIndex(cell => Is(cell, heading));
        Width = headings.Count;
        Point = At("point");
        Quantity = At("quantity");
        Measured = At("measured");
        Title = At("title");
        Unit = At("unit");
        Predicted = At("predicted");
        Date = At("date");
        Remarks = At("remarks");
    }

    public int Width { get; }

    public int Point { get; }

    public int Quantity { get; }

    public int Measured { get; }

    public int Title { get; }

    public int Unit { get; }

    public int Predicted { get; }

    /// <summary>Not written by the program, welcome all the same.</summary>
    public int Date { get; }

    public int Remarks { get; }

    /// <returns><see langword="null"/> after errors.</returns>
    public static CardColumns? Read(string[] cells, LogLine line, DiagnosticList diagnostics)
    {
        var isFaulty = false;
        foreach (var (i, cell) in cells.Index().Where(entry => entry.Item.Length > 0))
        {
            var earlier = Array.FindIndex(cells, other => Is(other, cell));
            if (earlier == i)
                continue;
            diagnostics.Error("column-twice", line.Cell(i), $"{Quoted.Of(cell)} is a heading for the second time", "each heading once; rename or delete the others");
            isFaulty = true;
        }

        foreach (var missing in Required.Where(heading => !cells.Any(cell => Is(cell, heading))))
        {
            diagnostics.Error(
                "column-missing", line.Whole, $"no column is headed {Quoted.Of(missing)}", "the headings that `endurance testcard` writes: point, quantity and measured, the others as you like",
                NearestName.Find(missing, cells));
            isFaulty = true;
        }

        return isFaulty ? null : new CardColumns(cells);
    }

    private static bool Is(string cell, string heading) => string.Equals(cell, heading, StringComparison.OrdinalIgnoreCase);
}
