using Endurance.Quantities;
using Endurance.Studies.BatteryFit;

namespace Endurance.Reports;

/// <summary>How the words and numbers of a fit read.</summary>
internal static class FitText
{
    public static string Volts(Voltage voltage) => $"{RoundedNumber.Short(voltage.Volts, 3)} V";

    /// <summary>The runs a fit rests on.</summary>
    public static string Fitted(BatteryFitResult result)
    {
        var numbers = result.Runs.Where(run => run.IsFitted).Select(run => RoundedNumber.Short(run.Run.Number, 0)).ToList();
        return numbers.Count == 1 ? $"run {numbers[0]}" : $"runs {string.Join(", ", numbers)}";
    }

    public static string ExponentRemark(BatteryFitResult result) =>
        result.Law.IsExponentGiven ? "  # given, not measured" : "  # not measured: one rate only";

    public static string Role(RunFit run) => run.IsFitted ? "fitted" : "predicted";

    public static string Percent(double? fraction) => fraction is { } value ? RoundedNumber.Fixed(value * 100, 1) : CellText.Absent;

    /// <summary>Root mean square over the runs of a fit, where it has any.</summary>
    public static double? RootMeanSquare(IEnumerable<double?> values)
    {
        var known = values.OfType<double>().ToList();
        return known.Count == 0 ? null : Math.Sqrt(known.Average(value => value * value));
    }
}
