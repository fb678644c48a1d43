using ScottPlot;
using SkiaSharp;

namespace Endurance.Reports.Plots;

/// <summary>Draws the key: curves, lines, bars, numbered events and notes, in a column of its own beside the data.</summary>
internal sealed class KeyPainter(SKCanvas? canvas, float left, float width, float top) : IDisposable
{
    private const float SampleWidth = 46;
    private const float LineHeight = 18;

    private readonly Lettering _letters = Lettering.Regular(13);
    private readonly Lettering _headings = Lettering.Bold(13);

    private float _y = top;

    /// <summary>Draws the key, or only measures it where there is no canvas; the lower end in pixels.</summary>
    public static float Draw(SKCanvas? canvas, PlotDescription plot, float left, float width, float top)
    {
        using var painter = new KeyPainter(canvas, left, width, top);
        painter.DrawAll(plot);
        return painter._y;
    }

    public void Dispose()
    {
        _letters.Dispose();
        _headings.Dispose();
    }

    private void DrawAll(PlotDescription plot)
    {
        foreach (var series in plot.Panels.SelectMany(panel => panel.Series).DistinctBy(series => (series.Name, series.Style)))
            Entry(VisibleText.Shortened(series.Name, 60), y => Curve(series.Style, y));
        foreach (var line in plot.Panels.SelectMany(panel => panel.Lines))
            Entry(line.Text, y => Reference(line.Kind, y));
        var kinds = plot.Panels.SelectMany(panel => panel.Bars).Select(bar => bar.Kind)
            .Concat(plot.Grid is { } grid ? grid.Cells.SelectMany(row => row).Select(cell => cell.Kind) : []);
        if (plot.Panels.Any(panel => panel.Spans.Length > 0))
            SpanEntries();
        foreach (var kind in kinds.Distinct().Order())
            Entry(WordsFor(kind), y => Bar(kind, y));
        if (plot.Panels.Any(panel => panel.Bars.Any(bar => bar.Required is not null)))
            Entry("minutes required", y => BarPainter.DrawRequired(canvas!, left + (SampleWidth / 2), y - 8));
        if (plot.Events.Length > 0)
            Heading("What happened");
        foreach (var happened in plot.Events)
            Entry(happened.Text, y => EventMarkPainter.DrawNumber(canvas!, happened.Number, left + EventMarkPainter.Radius + 2, y), indent: 32);
        if (plot.Notes.Length > 0)
            Gap();
        foreach (var note in plot.Notes)
            Entry(note, _ => { }, indent: 0);
    }

    private static string WordsFor(BarKind kind) => kind switch
    {
        BarKind.Met => "lasts as long as required",
        BarKind.Missed => "lost too early",
        _ => "nothing required",
    };

    private void Heading(string text)
    {
        Gap();
        if (canvas is not null)
            _headings.Draw(canvas, text, left, _y + 13);
        _y += LineHeight + 6;
    }

    private void Gap() => _y += 10;

    /// <summary>A sample, given the height of its middle, with wrapped words beside it.</summary>
    private void Entry(string text, Action<float> drawSample, float indent = SampleWidth + 12)
    {
        if (canvas is not null)
            drawSample(_y + 9);
        foreach (var line in _letters.Wrap(text, width - indent))
        {
            if (canvas is not null)
                _letters.Draw(canvas, line, left + indent, _y + 13.5f);
            _y += LineHeight;
        }

        _y += 6;
    }

    private void Curve(int number, float y)
    {
        var style = PlotStyle.Number(number);
        using var paint = Paint.NewDisposablePaint();
        DashedStroke.DrawLine(canvas!, left, y, left + SampleWidth, y, style.Ink, PlotStyle.LineWidth, style.Dashes);
        Drawing.DrawMarker(canvas!, paint, new Pixel(left + (SampleWidth / 2), y), style.MarkerOfSize(PlotStyle.MarkerSize));
    }

    private void Reference(ReferenceLineKind kind, float y)
    {
        var (thickness, dashes) = (PlotStyle.WidthOf(kind), PlotStyle.DashesOf(kind));
        var middle = left + (SampleWidth / 2);
        if (PlotStyle.IsLevel(kind))
            DashedStroke.DrawLine(canvas!, left, y, left + SampleWidth, y, SKColors.Black, thickness, dashes);
        else
            DashedStroke.DrawLine(canvas!, middle, y - 9, middle, y + 9, SKColors.Black, thickness, dashes);
    }

    private void SpanEntries()
    {
        Entry("what the low value gives", y => Bar(SpanPainter.LowKind, y));
        Entry("what the high value gives", y => Bar(SpanPainter.HighKind, y));
    }

    private void Bar(BarKind kind, float y)
    {
        using var outline = BarPainter.Outline(left, y - 8, left + SampleWidth, goesOn: false);
        BarPainter.Fill(canvas!, outline, kind);
    }
}
