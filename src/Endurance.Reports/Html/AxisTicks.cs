using Endurance.Reports.Plots;

namespace Endurance.Reports.Html;

/// <summary>Labelled places along an axis.</summary>
internal static class AxisTicks
{
    /// <summary>In rising order, in the units of the points.</summary>
    public static IEnumerable<(double Value, string Text)> Of(PlotAxis axis) => axis.IsLogarithmic ? Decades(axis) : Steps(axis);

    private static IEnumerable<(double Value, string Text)> Steps(PlotAxis axis)
    {
        for (var i = Math.Ceiling((axis.Low / axis.Step) - 1e-9); i * axis.Step <= axis.High + (axis.Step * 1e-9); i++)
            yield return (i * axis.Step, RoundedNumber.Short(i * axis.Step, 3));
    }

    private static IEnumerable<(double Value, string Text)> Decades(PlotAxis axis)
    {
        for (var decade = (int)Math.Floor(axis.Low); decade <= Math.Ceiling(axis.High); decade++)
        {
            foreach (var digit in (int[])[1, 2, 5])
            {
                var value = decade + Math.Log10(digit);
                if (value >= axis.Low && value <= axis.High)
                    yield return (value, RoundedNumber.Short(digit * Math.Pow(10, decade), 3));
            }
        }
    }
}
