using System.Collections.Immutable;
using Endurance.Studies.GroundTest;

namespace Endurance.Studies.Reconciliation;

/// <summary>Finds causes by putting each suspected fault into the aircraft and predicting the card anew.</summary>
/// <remarks>
/// A fault is a cause when the card with it fits readings that were out of tolerance and unsettles none that were within. Causes are
/// found one after the other, the one that explains most first, each on top of those before it.
/// </remarks>
internal sealed class Diagnosis
{
    private const int MostCauses = 8;

    /// <summary>More faults than these that fit alike are no pattern.</summary>
    private const int MostAlike = 3;

    /// <summary>A fault has to take away at least this part of a deviation to explain it.</summary>
    private const double LeastExplained = 0.5;

    /// <summary>Tolerances within which a good reading has to stay; above 1, since the size of a fault comes from readings.</summary>
    private const double Leeway = 1.5;

    private readonly ImmutableArray<ComparedReading> _readings;
    private readonly ImmutableArray<TestPoint> _points;
    private readonly HashSet<int> _unclear = [];

    private Diagnosis(ImmutableArray<ComparedReading> readings)
    {
        _readings = [.. readings.Where(reading => reading.Point.Setup is not null && reading.Measured is not null)];
        _points = [.. _readings.Select(reading => reading.Point).DistinctBy(point => point.Number)];
    }

    /// <summary>The causes, and the readings of simulated points that none of them explains.</summary>
    /// <param name="readings">Every one of the card.</param>
    /// <param name="suspects">What is tried.</param>
    /// <param name="cancellation">Looked at between faults.</param>
    public static (ImmutableArray<Cause> Causes, ImmutableArray<ComparedReading> Unexplained) Of(
        ImmutableArray<ComparedReading> readings, Suspects suspects, CancellationToken cancellation)
    {
        var diagnosis = new Diagnosis(readings);
        var causes = new List<Cause>();
        var found = Suspicion.OfNothing;
        var predicted = diagnosis.Predict(found)!.Value;
        while (causes.Count < MostCauses && diagnosis.Out(predicted).Any(i => !diagnosis._unclear.Contains(i)))
        {
            if (diagnosis.Best(found, predicted, suspects, cancellation) is not { } cause)
                break;
            if (cause.Others.Length >= MostAlike)
            {
                diagnosis._unclear.UnionWith(cause.Explained.Select(reading => diagnosis._readings.IndexOf(reading)));
                continue;
            }

            causes.Add(cause);
            found = found.And(cause.Fault);
            predicted = diagnosis.Predict(found)!.Value;
        }

        // Loads that are each within tolerance may add up to more than the tolerance of their sum.
        var withLoads = diagnosis.Predict(suspects.Deviating.Aggregate(found, (suspicion, load) => suspicion.And(load))) ?? predicted;
        return ([.. causes], [.. diagnosis.Out(predicted).Intersect(diagnosis.Out(withLoads)).Select(i => diagnosis._readings[i])]);
    }

    /// <summary>What is off both by the scenario alone and with what has been found.</summary>
    private IEnumerable<int> Out(ImmutableArray<ExpectedReading> predicted) =>
        Enumerable.Range(0, _readings.Length).Where(i => _readings[i].Verdict == ReadingVerdict.OutOfTolerance && !Fits(_readings[i], predicted[i]));

    private Cause? Best(Suspicion found, ImmutableArray<ExpectedReading> predicted, Suspects suspects, CancellationToken cancellation)
    {
        var faults = suspects.Of(_readings, found, predicted);
        var explained = new ImmutableArray<int>[faults.Length];
        var off = Out(predicted).Where(i => !_unclear.Contains(i)).ToHashSet();
        StudyLoop.For(faults.Length, cancellation, i => explained[i] = Explained(found.And(faults[i]), predicted, off));
        var most = explained.Max(readings => readings.Length);
        if (most == 0)
            return null;
        var best = Array.FindIndex(explained, readings => readings.Length == most);
        var others = Enumerable.Range(best + 1, faults.Length - best - 1).Where(i => explained[i].SequenceEqual(explained[best]));
        return new Cause(faults[best], [.. others.Select(i => faults[i])], [.. explained[best].Select(i => _readings[i])]);
    }

    /// <summary>None as soon as the suspicion unsettles a good reading.</summary>
    private ImmutableArray<int> Explained(Suspicion suspicion, ImmutableArray<ExpectedReading> predicted, HashSet<int> off)
    {
        var explained = ImmutableArray.CreateBuilder<int>();
        var missed = 0;
        foreach (var (point, places) in PlacesByPoint().OrderByDescending(entry => entry.Places.Any(off.Contains)))
        {
            if (explained.Count == 0 && !places.Any(off.Contains))
                return [];
            if (suspicion.Predict(point) is not { } suspected)
                return [];
            foreach (var i in places)
            {
                var with = suspected[point.Readings.IndexOf(_readings[i].Expected)];
                if (off.Contains(i) && IsExplained(_readings[i], predicted[i], with))
                    explained.Add(i);
                else if (off.Contains(i) && Math.Abs(with.Predicted - predicted[i].Predicted) > predicted[i].Tolerance)
                    missed++;
                else if (Fits(_readings[i], predicted[i]) && !Fits(_readings[i], with, Leeway))
                    return [];
            }
        }

        // A fault that moves readings elsewhere than they were measured is not what moved them.
        explained.Sort();
        return explained.Count >= 2 * missed ? explained.ToImmutable() : [];
    }

    private IEnumerable<(TestPoint Point, ImmutableArray<int> Places)> PlacesByPoint() =>
        Enumerable.Range(0, _readings.Length).GroupBy(i => _readings[i].Point.Number).Select(places => (_readings[places.First()].Point, places.ToImmutableArray()));

    private ImmutableArray<ExpectedReading>? Predict(Suspicion suspicion)
    {
        var predicted = _points.ToDictionary(point => point.Number, suspicion.Predict);
        return predicted.Values.Any(point => point is null)
            ? null
            : [.. _readings.Select(reading => predicted[reading.Point.Number]!.Value[reading.Point.Readings.IndexOf(reading.Expected)])];
    }

    private static bool IsExplained(ComparedReading reading, ExpectedReading without, ExpectedReading with) =>
        Fits(reading, with) && Math.Abs(reading.Measured!.Value - with.Predicted) <= LeastExplained * Math.Abs(reading.Measured.Value - without.Predicted);

    private static bool Fits(ComparedReading reading, ExpectedReading predicted, double leeway = 1) =>
        (reading with { Expected = predicted with { Tolerance = predicted.Tolerance * leeway } }).Verdict == ReadingVerdict.InTolerance;
}
