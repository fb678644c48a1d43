using System.Collections.Immutable;
using Endurance.Quantities;

namespace Endurance.Studies.BatteryFit;

/// <summary>Fits lifetime over current to the ends of several discharges: a straight line in log-log where the currents are constant.</summary>
internal static class LifetimeLawFit
{
    /// <summary>Currents nearer than this tell nothing of an exponent.</summary>
    private const double LeastSpread = 1.2;

    /// <param name="runs">At least one.</param>
    /// <param name="ends">When each of them ended; above zero.</param>
    /// <param name="given">Exponent known from elsewhere.</param>
    public static LifetimeLaw Of(ImmutableArray<DischargeRun> runs, ImmutableArray<Duration> ends, double? given)
    {
        var amperes = runs.Select((run, i) => run.LifeUsed(1, 1, ends[i]) / ends[i].Seconds).ToArray();
        var pivot = Math.Exp(amperes.Average(Math.Log));
        var isMeasured = given is null && amperes.Max() / amperes.Min() >= LeastSpread;
        var logEnds = ends.Select(end => Math.Log(end.Seconds)).ToArray();
        double Exponent(double[] parameters) => isMeasured ? parameters[1] : given ?? 1;
        double[] Model(double[] parameters) =>
            [.. runs.Select((run, i) => parameters[0] + logEnds[i] - Math.Log(run.LifeUsed(Exponent(parameters), pivot, ends[i])))];
        var start = logEnds.Average();
        var fit = LeastSquares.Fit(Model, logEnds, isMeasured ? [start, 1.0] : [start]);
        var hours = Math.Exp(fit.Values[0]) / 3600;
        return new LifetimeLaw
        {
            Pivot = Current.FromAmperes(pivot),
            PivotHours = new FittedValue(hours, hours * fit[0].StandardError),
            Exponent = isMeasured ? fit[1] : new FittedValue(given ?? 1, null),
            IsExponentMeasured = isMeasured,
            IsExponentGiven = given is not null,
            Covariance = isMeasured ? fit.Covariance?[0, 1] ?? 0 : 0,
        };
    }
}
