using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;

namespace Endurance.Studies.Adjustment;

/// <summary>The registry of what sweeps, spreads and sizing may vary; a new quantity is one entry here.</summary>
public static class AdjustableQuantities
{
    /// <summary>Multiplies what every load draws.</summary>
    public const string AllLoads = "loads.draw";

    /// <summary>Multiplies the resistance of every feed: wire, contacts, breakers, fuses and return.</summary>
    public const string AllFeeds = "feeds.resistance";

    /// <summary>Added to the forward voltage of every diode that is no ideal-diode controller.</summary>
    public const string AllDiodes = "diodes.drop";

    /// <summary>Multiplies the health of every battery.</summary>
    public const string AllBatteries = "batteries.health";

    /// <summary>What moves many parts at once.</summary>
    public static ImmutableArray<string> Groups => [AllLoads, AllFeeds, AllDiodes, AllBatteries, RecognitionDelay];

    /// <summary>Added to every step by which the pilot acts, and to every recognition of a warning.</summary>
    public const string RecognitionDelay = "recognition.delay";

    /// <summary>All quantities of a scenario, by part in its order.</summary>
    public static ImmutableArray<AdjustableQuantity> Of(Scenario scenario) =>
    [
        .. scenario.Batteries.SelectMany((_, i) => BatteryQuantities.Of(scenario, i)),
        .. scenario.Alternators.SelectMany((_, i) => SourceQuantities(scenario, i)),
        .. scenario.Buses.Index().Where(bus => bus.Item.Cutoff is not null).Select(bus => Cutoff(bus.Item.Name, bus.Index)),
        .. scenario.Feeds.SelectMany((_, i) => FeedQuantities.Of(scenario, i)),
        .. scenario.Loads.SelectMany((_, i) => LoadQuantities(scenario, i)),
        new(AllLoads, QuantityKind.Number, 0.01, 100, _ => 1, ScaleAllLoads),
        new(AllFeeds, QuantityKind.Number, 0.01, 100, _ => 1, FeedQuantities.ScaleAll),
        new(AllDiodes, QuantityKind.Volts, FeedQuantities.LeastDrop, FeedQuantities.MostDrop, _ => 0, FeedQuantities.RaiseAll),
        new(AllBatteries, QuantityKind.Number, 0.01, 2, _ => 1, BatteryQuantities.ScaleAllHealth),
        new(RecognitionDelay, QuantityKind.Duration, 0, 1e6, _ => 0, Recognition.Later),
    ];

    /// <summary>The quantity of a path, or <see langword="null"/>.</summary>
    public static AdjustableQuantity? Find(Scenario scenario, string path) =>
        Of(scenario).FirstOrDefault(quantity => string.Equals(quantity.Path, path, StringComparison.Ordinal));

    /// <summary>What sets one part comes before what multiplies or adds to all, which would be undone by it; else the order given.</summary>
    public static ImmutableArray<Tolerance> InOrderOfUse(ImmutableArray<Tolerance> tolerances) =>
        [.. tolerances.OrderBy(tolerance => Groups.Contains(tolerance.Quantity, StringComparer.Ordinal))];

    private static IEnumerable<AdjustableQuantity> SourceQuantities(Scenario scenario, int i)
    {
        var name = scenario.Alternators[i].Name;
        yield return new(name + ".setpoint", QuantityKind.Volts, 1, 100, s => s.Alternators[i].Setpoint.Volts,
            (s, value) => Replace(s, i, alternator => alternator with { Setpoint = Voltage.FromVolts(value) }));
        yield return new(name + ".rated", QuantityKind.Amperes, 0.01, 1e4, s => s.Alternators[i].Rated.Amperes,
            (s, value) => Replace(s, i, alternator => alternator with { Rated = Current.FromAmperes(value) }));
    }

    private static Scenario Replace(Scenario s, int i, Func<Alternator, Alternator> change) =>
        s with { Alternators = s.Alternators.SetItem(i, change(s.Alternators[i])) };

    private static AdjustableQuantity Cutoff(string name, int i) =>
        new(name + ".cutoff", QuantityKind.Volts, 0.1, 100, s => s.Buses[i].Cutoff!.Value.Volts,
            (s, value) => s with { Buses = s.Buses.SetItem(i, s.Buses[i] with { Cutoff = Voltage.FromVolts(value) }) });

    private static IEnumerable<AdjustableQuantity> LoadQuantities(Scenario scenario, int i)
    {
        var load = scenario.Loads[i];
        var (word, kind) = load.Demand switch
        {
            ConstantCurrent => ("current", QuantityKind.Amperes),
            ConstantPower => ("power", QuantityKind.Watts),
            _ => ("resistance", QuantityKind.Ohms),
        };
        yield return new($"{load.Name}.{word}", kind, 1e-6, 1e6, s => Demands.Value(s.Loads[i].Demand),
            (s, value) => Replace(s, i, one => one with { Demand = Demands.WithValue(one.Demand, value) }));
        yield return new(load.Name + ".draw", QuantityKind.Number, 0.01, 100, _ => 1,
            (s, value) => Replace(s, i, one => one with { Demand = Demands.Scaled(one.Demand, value) }));
        yield return new(load.Name + ".duty", QuantityKind.Fraction, 1e-3, 1, s => s.Loads[i].Duty,
            (s, value) => Replace(s, i, one => one with { Duty = value }));
        if (load.Minimum is not null)
        {
            yield return new(load.Name + ".minimum", QuantityKind.Volts, 0.1, 100, s => s.Loads[i].Minimum!.Value.Volts,
                (s, value) => Replace(s, i, one => one with { Minimum = Voltage.FromVolts(value) }));
        }
    }

    private static Scenario Replace(Scenario s, int i, Func<Load, Load> change) => s with { Loads = s.Loads.SetItem(i, change(s.Loads[i])) };

    private static Scenario ScaleAllLoads(Scenario s, double factor) =>
        s with { Loads = [.. s.Loads.Select(load => load with { Demand = Demands.Scaled(load.Demand, factor) })] };
}
