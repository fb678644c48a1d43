using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.Adjustment;

namespace Endurance.Studies.Sizing;

/// <summary>How large a battery must be, and how far other things may go before a requirement fails.</summary>
public static class SizingStudy
{
    private const int ScanPoints = 25;

    /// <summary>The answer to one question; batteries on offer are tried when a capacity is asked for.</summary>
    /// <param name="scenario">With at least one requirement and one failure case.</param>
    /// <param name="question">Its subject is a part of the scenario.</param>
    /// <param name="options">Numerical settings.</param>
    /// <param name="progress">Called with the number of values tried and of about all that will be, from any thread.</param>
    /// <param name="cancellation">Stops the study.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static SizingAnswer Answer(
        Scenario scenario, SizingQuestion question, SimulationOptions options, Action<int, int>? progress = null, CancellationToken cancellation = default)
    {
        var battery = scenario.Batteries.FirstOrDefault(item => string.Equals(item.Name, question.Subject, StringComparison.Ordinal));
        var (present, search) = question.Find switch
        {
            SizingFind.Capacity => (battery!.RatedCapacity.Coulombs, OfCapacity(scenario, question.Subject, question.KeepsResistance)),
            SizingFind.Load => (0, OfExtraLoad(scenario, question.Subject)),
            SizingFind.Delay => (0, OfDelay(scenario)),
            SizingFind.ShedTime => (0, OfShedTime(scenario)),
            SizingFind.Health => (battery!.Health, OfHealth(scenario, question.Subject)),
            _ => throw new ArgumentOutOfRangeException(nameof(question), question.Find, "Unknown question."),
        };
        var offers = question.Find is SizingFind.Capacity ? scenario.BatteriesOnOffer.Length : 0;
        var (done, all) = (0, search.MostTrials + 1 + offers);
        void Tried() => progress?.Invoke(Math.Min(Interlocked.Increment(ref done), all), all);
        var limit = search.Run(options, Tried, cancellation);
        Tried();
        return new SizingAnswer
        {
            Question = question,
            Present = Trials.Of(scenario, present, options, cancellation),
            Limit = limit,
            Offers = offers > 0 ? Offers(scenario, question.Subject, options, Tried, cancellation) : [],
        };
    }

    /// <summary>Smallest rated capacity of a battery that meets every requirement in every case, in coulombs.</summary>
    /// <param name="scenario">With at least one requirement.</param>
    /// <param name="battery">Name of the battery.</param>
    /// <param name="keepResistance">Whether the resistance stays as it is; otherwise it falls as the capacity grows.</param>
    /// <param name="options">Numerical settings.</param>
    /// <param name="cancellation">Stops the study.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static LimitResult Capacity(
        Scenario scenario, string battery, bool keepResistance, SimulationOptions options, CancellationToken cancellation = default) =>
        OfCapacity(scenario, battery, keepResistance).Run(options, () => { }, cancellation);

    private static LimitSearch OfCapacity(Scenario scenario, string battery, bool keepResistance)
    {
        const double smallest = 0.05, largest = 20;
        var i = scenario.Batteries.Index().First(item => string.Equals(item.Item.Name, battery, StringComparison.Ordinal)).Index;
        var now = scenario.Batteries[i].RatedCapacity.Coulombs;
        Scenario With(double coulombs) => scenario with
        {
            Batteries = scenario.Batteries.SetItem(i, Sized(scenario.Batteries[i], Charge.FromCoulombs(coulombs), keepResistance)),
        };
        return new LimitSearch(Geometric(smallest * now, largest * now), smallestThatPasses: true, With);
    }

    /// <summary>The trial of each battery on offer in place of one of the scenario's, in the order of the offer.</summary>
    public static ImmutableArray<Trial> Offers(Scenario scenario, string battery, SimulationOptions options, CancellationToken cancellation = default) =>
        Offers(scenario, battery, options, () => { }, cancellation);

    private static ImmutableArray<Trial> Offers(Scenario scenario, string battery, SimulationOptions options, Action tried, CancellationToken cancellation)
    {
        var i = scenario.Batteries.Index().First(item => string.Equals(item.Item.Name, battery, StringComparison.Ordinal)).Index;
        var trials = new Trial[scenario.BatteriesOnOffer.Length];
        StudyLoop.For(trials.Length, cancellation, o =>
        {
            var offer = scenario.BatteriesOnOffer[o];
            // Two capacities compare at one hour rate only: that of the battery replaced, by whose law the offer is carried over.
            var present = scenario.Batteries[i];
            var ratio = Current.FromAmperes(offer.Capacity.AmpereHours / offer.Rate.Hours) / present.NewCurrentFor(offer.Rate);
            var sized = Sized(present, present.RatedCapacity * ratio, keepResistance: false);
            trials[o] = Trials.Of(scenario with { Batteries = scenario.Batteries.SetItem(i, sized) }, offer.Capacity.Coulombs, options, cancellation);
            tried();
        });
        return [.. trials];
    }

    /// <summary>Most amperes of a further constant-current load on a bus.</summary>
    public static LimitResult ExtraLoad(Scenario scenario, string bus, SimulationOptions options, CancellationToken cancellation = default) =>
        OfExtraLoad(scenario, bus).Run(options, () => { }, cancellation);

    private static LimitSearch OfExtraLoad(Scenario scenario, string bus)
    {
        const double most = 200;
        Scenario With(double amperes) => amperes <= 0 ? scenario : scenario with
        {
            Loads = scenario.Loads.Add(new Load { Name = "extra load", Bus = bus, Demand = new ConstantCurrent(Current.FromAmperes(amperes)) }),
        };
        return new LimitSearch([0, .. Geometric(0.02, most)], smallestThatPasses: false, With);
    }

    /// <summary>Whether any failure case has a step that <see cref="Delay"/> or <see cref="ShedTime"/> would move.</summary>
    public static bool HasStepsToDelay(Scenario scenario, bool shedOnly) =>
        scenario.FailureCases.Any(one => one.Timeline.Any(shedOnly ? Recognition.Sheds : Recognition.IsPilots));

    /// <summary>Most seconds by which everything the pilot does may come later than written.</summary>
    public static LimitResult Delay(Scenario scenario, SimulationOptions options, CancellationToken cancellation = default) =>
        OfDelay(scenario).Run(options, () => { }, cancellation);

    private static LimitSearch OfDelay(Scenario scenario) =>
        new(Later(scenario), smallestThatPasses: false, seconds => Recognition.Later(scenario, seconds));

    /// <summary>Most seconds by which every shedding may come later than written.</summary>
    public static LimitResult ShedTime(Scenario scenario, SimulationOptions options, CancellationToken cancellation = default) =>
        OfShedTime(scenario).Run(options, () => { }, cancellation);

    private static LimitSearch OfShedTime(Scenario scenario) =>
        new(Later(scenario), smallestThatPasses: false, seconds => Recognition.ShedLater(scenario, seconds));

    /// <summary>Lowest health of a battery, as a fraction: when to replace it.</summary>
    public static LimitResult Health(Scenario scenario, string battery, SimulationOptions options, CancellationToken cancellation = default) =>
        OfHealth(scenario, battery).Run(options, () => { }, cancellation);

    private static LimitSearch OfHealth(Scenario scenario, string battery)
    {
        var health = AdjustableQuantities.Find(scenario, battery + ".health")!;
        ImmutableArray<double> values = [.. Enumerable.Range(1, ScanPoints).Select(step => (double)step / ScanPoints)];
        return new LimitSearch(values, smallestThatPasses: true, value => health.Set(scenario, value));
    }

    private static Battery Sized(Battery battery, Charge capacity, bool keepResistance)
    {
        var sized = BatteryQuantities.Resized(battery, capacity);
        return keepResistance ? sized with { Resistance = battery.Resistance, ResistanceWhenNew = battery.ResistanceWhenNew, Polarisation = battery.Polarisation } : sized;
    }

    private static ImmutableArray<double> Later(Scenario scenario) =>
        [.. Enumerable.Range(0, ScanPoints).Select(step => scenario.Horizon.Seconds * step / (ScanPoints - 1))];

    private static ImmutableArray<double> Geometric(double low, double high) =>
        [.. Enumerable.Range(0, ScanPoints).Select(step => low * Math.Pow(high / low, (double)step / (ScanPoints - 1)))];
}
