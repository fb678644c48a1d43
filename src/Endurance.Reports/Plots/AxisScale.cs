namespace Endurance.Reports.Plots;

/// <summary>Axis ends and ticks at round numbers.</summary>
internal static class AxisScale
{
    private const int MostTicks = 9;
    private const double Margin = 0.05;

    private static readonly double[] MinuteSteps = [1, 2, 5, 10, 15, 20, 30, 60, 120, 240, 480, 960];

    /// <summary>From zero to at least so many minutes, with a little room at the right.</summary>
    public static PlotAxis Minutes(double longest)
    {
        var high = Math.Max(longest * 1.06, 1);
        return new PlotAxis("minutes since zero of the timeline", "min", 0, high, MinuteStep(high));
    }

    /// <summary>Holds both ends, widened to whole steps.</summary>
    public static PlotAxis Round(string label, string unit, double low, double high)
    {
        var step = DecimalStep(Math.Max(high - low, 1e-3));
        var bottom = Math.Floor((low / step) + 1e-9) * step;
        var top = Math.Ceiling((high / step) - 1e-9) * step;
        return new PlotAxis(label, unit, bottom, top > bottom ? top : bottom + step, step);
    }

    /// <summary>Holds both ends, which are above zero, on a logarithmic scale.</summary>
    public static PlotAxis Logarithmic(string label, string unit, double low, double high)
    {
        var (bottom, top) = (Math.Log10(low), Math.Log10(high));
        var margin = Math.Max(top - bottom, 0.1) * Margin;
        return new PlotAxis(label, unit, bottom - margin, top + margin, 1) { IsLogarithmic = true };
    }

    /// <summary>Holds zero and both ends, with a margin all round, so that a curve along an end can be seen.</summary>
    public static PlotAxis AroundZero(string label, string unit, double low, double high)
    {
        var (bottom, top) = (Math.Min(low, 0), Math.Max(high, 0));
        var span = Math.Max(top - bottom, 1);
        return new PlotAxis(label, unit, bottom - (span * Margin), bottom + (span * (1 + Margin)), DecimalStep(span));
    }

    private static double MinuteStep(double span)
    {
        var found = Array.FindIndex(MinuteSteps, step => span / step <= MostTicks);
        return found >= 0 ? MinuteSteps[found] : DecimalStep(span);
    }

    /// <summary>1, 2 or 5 times a power of ten.</summary>
    private static double DecimalStep(double span)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(span / MostTicks)));
        foreach (var factor in (ReadOnlySpan<double>)[1, 2, 5])
        {
            if (span / (factor * power) <= MostTicks)
                return factor * power;
        }

        return 10 * power;
    }
}
