using System.Text;

namespace Endurance.Reports.Plots;

/// <summary>A picture as stable text, for comparison; numbers rounded to 1e-6, so that processors agree.</summary>
public static class PlotDescriptionText
{
    /// <summary>One line an element, in the order drawn.</summary>
    public static string Write(PlotDescription plot)
    {
        var text = new StringBuilder();
        Line(text, $"plot {plot.Title}");
        Line(text, $"subject {plot.Subject}");
        foreach (var panel in plot.Panels)
            AppendPanel(text, panel);
        if (plot.Grid is { } grid)
            AppendGrid(text, grid);
        foreach (var happened in plot.Events)
            Line(text, $"event {Number(happened.Number)} at {Number(happened.Minutes)}: {happened.Text}");
        foreach (var note in plot.Notes)
            Line(text, $"note {note}");
        return text.ToString();
    }

    private static void AppendPanel(StringBuilder text, PlotPanel panel)
    {
        Line(text, "panel");
        Line(text, $"  x {Axis(panel.X)}");
        if (panel.Y is { } y)
            Line(text, $"  y {Axis(y)}");
        foreach (var line in panel.Lines)
            Line(text, $"  {Word(line.Kind)} {Number(line.Value)}: {line.Text}");
        foreach (var series in panel.Series)
            Line(text, $"  series {Number(series.Style)} {series.Name}: {string.Join(' ', series.Points.Select(Point))}");
        foreach (var marker in panel.Markers)
            Line(text, $"  marker {Number(marker.Style)} {Point(marker.At)}: {marker.Text}");
        foreach (var group in panel.Groups)
            Line(text, $"  group {Number(group.Row)}: {group.Text}");
        foreach (var bar in panel.Bars)
            AppendBar(text, bar);
        foreach (var column in panel.Columns)
            Line(text, $"  column {Number(column.From)} to {Number(column.To)}: {Number(column.Height)}");
        foreach (var span in panel.Spans)
            Line(text, $"  span {Number(span.Row)} {span.Label}: {Number(span.Base)} low {Number(span.Low)} at {span.LowText}, high {Number(span.High)} at {span.HighText}");
    }

    private static void AppendGrid(StringBuilder text, PlotGrid grid)
    {
        Line(text, $"grid {string.Join(", ", grid.Columns)}");
        foreach (var (row, cells) in grid.Rows.Zip(grid.Cells))
            Line(text, $"  row {row}: {string.Join(", ", cells.Select(cell => $"{cell.Text} {Word(cell.Kind)}"))}");
    }

    private static string Word(BarKind kind) => kind switch { BarKind.Met => "met", BarKind.Missed => "missed", _ => "free" };

    private static string Word(ReferenceLineKind kind) => kind switch
    {
        ReferenceLineKind.Cutoff => "cutoff",
        ReferenceLineKind.Requirement => "requirement",
        ReferenceLineKind.LevelRequirement => "level requirement",
        _ => "present",
    };

    private static void AppendBar(StringBuilder text, PlotBar bar)
    {
        var required = bar.Required is { } minutes ? $" required {Number(minutes)}" : "";
        Line(text, $"  bar {Number(bar.Row)} {bar.Label}: {Number(bar.Length)}{(bar.GoesOn ? " and on" : "")} {Word(bar.Kind)}{required}: {bar.Text}");
    }

    private static string Axis(PlotAxis axis) => $"{axis.Label} ({axis.Unit}) {Number(axis.Low)} to {Number(axis.High)} by {Number(axis.Step)}{(axis.IsLogarithmic ? " logarithmic" : "")}";

    private static string Point(PlotPoint point) => $"{Number(point.X)},{Number(point.Y)}";

    private static string Number(double value) => RoundedNumber.Short(value, 6);

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}
