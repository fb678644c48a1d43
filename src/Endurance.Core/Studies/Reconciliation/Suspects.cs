using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.GroundTest;

namespace Endurance.Studies.Reconciliation;

/// <summary>Everything that is tried as a cause, in a fixed order; sizes come from the readings.</summary>
internal sealed class Suspects(Scenario scenario, ImmutableArray<MeasuredLoad> loads)
{
    /// <summary>Amperes; with less, a drop tells nothing of a resistance.</summary>
    private const double LeastCurrent = 0.5;

    /// <summary>Each takes away most of what the one before has left; the load that the drop slows down makes the rest.</summary>
    private const int JointSteps = 8;

    /// <summary>Currents whose tolerance is a fraction of them; fewer show no common factor.</summary>
    private const int FewestCurrents = 3;

    /// <summary>Between the largest and the smallest ratio of currents that one factor explains.</summary>
    private const double RatioSpread = 0.06;

    /// <summary>Loads that draw otherwise and yet are within their tolerance.</summary>
    public IEnumerable<Fault> Deviating => loads.Where(load => load.IsWithinTolerance && !load.IsAsDrawn).Select(FaultyParts.Draws);

    /// <param name="readings">Measured, at points that were simulated.</param>
    /// <param name="found">The faults found so far.</param>
    /// <param name="predicted">What they make of the readings, in the same order.</param>
    public ImmutableArray<Fault> Of(ImmutableArray<ComparedReading> readings, Suspicion found, ImmutableArray<ExpectedReading> predicted) =>
    [
        .. scenario.Batteries.Select(FaultyBatteries.Missing),
        .. FaultyBatteries.Off(scenario, readings),
        .. scenario.Feeds.Where(feed => feed.Diode is not null).Select(FaultyFeeds.DiodeReversed),
        .. scenario.Feeds.Where(feed => feed.Diode is not null).Select(FaultyFeeds.DiodeShorted),
        .. scenario.Feeds.Select(FaultyFeeds.Open),
        .. scenario.Feeds.Where(feed => !Isolation.Of(feed).IsDisconnected).Select(FaultyFeeds.ContactStuck),
        .. scenario.Feeds.Select(feed => Joint(feed, readings, found)).OfType<Fault>(),
        .. loads.Where(load => !load.IsWithinTolerance).Select(FaultyParts.Draws),
        .. scenario.Loads.Where(load => DrawsNothing(load, readings)).Select(FaultyParts.DrawsNothing),
        .. scenario.Loads.Where(load => load.Inputs.IsEmpty).SelectMany(load => scenario.Buses.Where(bus => !Is(bus.Name, load.Bus)).Select(bus => FaultyParts.OnBus(load, bus.Name))),
        .. Meter(readings, predicted) is { } meter ? [meter] : ImmutableArray<Fault>.Empty,
    ];

    private static bool DrawsNothing(Load load, ImmutableArray<ComparedReading> readings) => readings.Any(reading =>
        reading.Expected.Kind == ReadingKind.LoadAmperes && Is(reading.Expected.Part, load.Name)
        && reading.Verdict == ReadingVerdict.OutOfTolerance && LoadMeasurement.IsNothing(reading));

    /// <summary>From the point at which the feed carries most, of the size that makes its volts there as they were measured.</summary>
    private static Fault? Joint(Feed feed, ImmutableArray<ComparedReading> readings, Suspicion found)
    {
        var most = readings.Where(reading => reading.Expected.Kind == ReadingKind.FeedAmperes && Is(reading.Expected.Part, feed.Name) && reading.Measured >= LeastCurrent)
            .MaxBy(reading => reading.Measured);
        if (most is null || Drop(feed, [.. readings.Where(reading => reading.Point.Number == most.Point.Number).Select(reading => reading.Expected with { Predicted = reading.Measured!.Value })]) is not { } measured)
            return null;
        double ohms = 0;
        for (var i = 0; i < JointSteps; i++)
        {
            var tried = ohms > 0 ? found.And(FaultyFeeds.JointResistance(feed, Resistance.FromOhms(ohms))) : found;
            if (tried.Predict(most.Point) is not { } predicted || Drop(feed, predicted) is not { } drop)
                return null;
            ohms += (measured - drop) / most.Measured!.Value;
            if (ohms <= 0)
                return null;
        }

        return FaultyFeeds.JointResistance(feed, Resistance.FromOhms(ohms));
    }

    /// <summary>Volts lost in the feed; <see langword="null"/> without both of its buses.</summary>
    private static double? Drop(Feed feed, ImmutableArray<ExpectedReading> readings)
    {
        double? Volts(string bus) => readings.FirstOrDefault(reading => reading.Kind == ReadingKind.BusVolts && Is(reading.Part, bus))?.Predicted;
        return Volts(feed.From) - Volts(feed.To);
    }

    private static Fault? Meter(ImmutableArray<ComparedReading> readings, ImmutableArray<ExpectedReading> predicted)
    {
        var ratios = readings.Index()
            .Where(entry => entry.Item.Expected.Kind != ReadingKind.BusVolts && Math.Abs(predicted[entry.Index].Predicted) * Tolerances.CurrentFraction > Tolerances.LeastCurrent)
            .Select(entry => (Ratio: entry.Item.Measured!.Value / predicted[entry.Index].Predicted, entry.Item.Expected.Part)).OrderBy(entry => entry.Ratio).ToList();
        if (ratios.Count < FewestCurrents || ratios.Select(entry => entry.Part).Distinct(StringComparer.Ordinal).Count() < FewestCurrents)
            return null;
        var middle = ratios[ratios.Count / 2].Ratio;
        return middle > 0 && ratios[^1].Ratio - ratios[0].Ratio <= RatioSpread * middle ? FaultyParts.MeterOff(middle) : null;
    }

    private static bool Is(string a, string b) => string.Equals(a, b, StringComparison.Ordinal);
}
