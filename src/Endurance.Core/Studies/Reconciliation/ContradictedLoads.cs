using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Studies.GroundTest;

namespace Endurance.Studies.Reconciliation;

/// <summary>Loads that read lower alone than the rest of the card has them: a slipped decimal point, or a clamp around one wire of two.</summary>
/// <remarks>Taken over, such a draw would make minutes longer than they are. One that reads higher errs short and is taken over.</remarks>
internal static class ContradictedLoads
{
    /// <summary>Squares of deviations in tolerances; less tells nothing.</summary>
    private const double LeastDifference = 1;

    /// <param name="scenario">As drawn.</param>
    /// <param name="readings">Every one of the card.</param>
    /// <param name="causes">What is wrong besides; what they say of draws is left aside.</param>
    /// <param name="loads">As measured alone.</param>
    public static ImmutableArray<MeasuredLoad> Of(Scenario scenario, ImmutableArray<ComparedReading> readings, ImmutableArray<Cause> causes, ImmutableArray<MeasuredLoad> loads)
    {
        var aircraft = causes.Select(cause => cause.Fault).Where(fault => fault.Kind != FaultKind.LoadDrawsOtherwise)
            .Aggregate(Suspicion.OfNothing, (suspicion, fault) => suspicion.And(fault));
        Suspicion With(IEnumerable<MeasuredLoad> measured) => measured.Aggregate(aircraft, (suspicion, load) => suspicion.And(FaultyParts.Draws(load)));
        return
        [
            .. from load in loads
               where DrawsLess(scenario, load)
               let others = readings.Where(reading => reading.Point.Setup is not null && reading.Measured is not null && reading.Point.Number != load.Point)
                   .GroupBy(reading => reading.Point.Number).ToList()
               where Misfit(others, With(loads)) - Misfit(others, With(loads.Remove(load))) > LeastDifference
               select load,
        ];
    }

    public static Finding Finding(MeasuredLoad load) => new(
        "load-not-taken-over",
        Severity.Warning,
        load.Drawn.Name,
        FormattableString.Invariant($"{load.Amperes:0.##} A"),
        FormattableString.Invariant($"T{load.Point} has it draw less than the scenario says, and the other points of the card do not: its draw stays as the scenario has it. Measure it again, volts and amperes, with one wire of its supply in the clamp, and look at the decimal points."));

    private static bool DrawsLess(Scenario scenario, MeasuredLoad load) =>
        Tolerances.Draw(scenario, load.Measured) < Tolerances.Draw(scenario, load.Drawn) * (1 - Tolerances.CurrentFraction);

    private static double Misfit(IEnumerable<IGrouping<int, ComparedReading>> points, Suspicion suspicion)
    {
        double squares = 0;
        foreach (var readings in points)
        {
            var point = readings.First().Point;
            if (suspicion.Predict(point) is not { } predicted)
                continue;
            foreach (var reading in readings)
            {
                var with = predicted[point.Readings.IndexOf(reading.Expected)];
                squares += Math.Pow((reading.Measured!.Value - with.Predicted) / with.Tolerance, 2);
            }
        }

        return squares;
    }
}
