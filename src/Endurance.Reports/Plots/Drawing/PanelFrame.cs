using ScottPlot;

namespace Endurance.Reports.Plots;

/// <summary>Where a panel lies in a picture, in pixels.</summary>
/// <param name="Panel">What it shows.</param>
/// <param name="Left">Left edge of the data.</param>
/// <param name="Top">Upper edge of the data.</param>
/// <param name="Width">Of the data.</param>
/// <param name="Height">Of the data.</param>
/// <param name="HasAxisLabel">The lowest panel carries the label of the shared axis.</param>
internal sealed record PanelFrame(PlotPanel Panel, float Left, float Top, float Width, float Height, bool HasAxisLabel)
{
    /// <summary>Least height of one row of bars.</summary>
    public const float LeastRowHeight = 26;
    private const float MostRowHeight = 44;
    private const float RowsMargin = 8;

    public float Right => Left + Width;

    public float Bottom => Top + Height;

    public PixelRect Rect => new(Left, Right, Bottom, Top);

    public float X(double value) => Left + (float)((value - Panel.X.Low) / (Panel.X.High - Panel.X.Low) * Width);

    public float Y(double value) => Panel.Y is { } axis ? Bottom - (float)((value - axis.Low) / (axis.High - axis.Low) * Height) : Top;

    /// <summary>Few rows share the height that many would need.</summary>
    public float RowHeight => Math.Clamp((Height - (2 * RowsMargin)) / Math.Max(1, Panel.RowCount), LeastRowHeight, MostRowHeight);

    public float RowTop(int row) => Top + RowsMargin + (row * RowHeight);

    /// <summary>Labelled values of an axis.</summary>
    public static IEnumerable<double> Ticks(PlotAxis axis)
    {
        if (axis.IsLogarithmic)
            return LogarithmicTicks(axis);
        var first = (int)Math.Ceiling((axis.Low / axis.Step) - 1e-9);
        var last = (int)Math.Floor((axis.High / axis.Step) + 1e-9);
        return Enumerable.Range(first, last - first + 1).Select(i => i * axis.Step);
    }

    /// <summary>The number at a tick.</summary>
    public static string TickText(PlotAxis axis, double tick) => RoundedNumber.Short(axis.IsLogarithmic ? Math.Pow(10, tick) : tick, 3);

    private static IEnumerable<double> LogarithmicTicks(PlotAxis axis) =>
        from power in Enumerable.Range((int)Math.Floor(axis.Low), (int)Math.Ceiling(axis.High) - (int)Math.Floor(axis.Low) + 1)
        from factor in (double[])[1, 2, 5]
        let tick = power + Math.Log10(factor)
        where tick >= axis.Low && tick <= axis.High
        select tick;
}
