using Endurance.Quantities;

namespace Endurance.Scenarios;

/// <summary>The voltage each bus stands at, and what a load takes at the system's voltage where a converter lies between.</summary>
/// <remarks>
/// Buses tied by feeds, whatever their contacts are, stand at one voltage: the system's where an alternator is among them or no converter
/// gives into them, else the converter's, and of several the lowest.
/// </remarks>
internal sealed class BusVoltages
{
    /// <summary>How far from 14 V or 28 V, as a share of it, an output still makes a 14 V or 28 V bus.</summary>
    private const double Near = 0.25;

    private readonly Scenario scenario;
    private readonly Dictionary<string, string> group;

    public BusVoltages(Scenario scenario)
    {
        this.scenario = scenario;
        group = scenario.Buses.ToDictionary(bus => bus.Name, bus => bus.Name, StringComparer.Ordinal);
        foreach (var feed in scenario.Feeds.Where(feed => group.ContainsKey(feed.From) && group.ContainsKey(feed.To)))
            group[First(feed.To)] = First(feed.From);
        foreach (var bus in scenario.Buses)
            group[bus.Name] = First(bus.Name);
    }

    /// <summary>Nominal voltage with the alternator running: 14 V, 28 V, or what a converter gives that is near neither.</summary>
    public Voltage Of(string bus) => BehindConverters(bus) is { Count: > 0 } converters ? Standard(converters.Min(converter => converter.Output)) : scenario.NominalVoltage;

    /// <summary>Nominal voltage of a battery on the bus: 12 V where the bus is a 14 V one, in proportion elsewhere.</summary>
    public Voltage OfBattery(string bus) => Of(bus) * (scenario.BatteryVoltage / scenario.NominalVoltage);

    /// <summary>14 V buses in series that the bus counts for: 1, 2, or a fraction where a converter gives another voltage.</summary>
    public double Fourteens(string bus) => Of(bus).Volts / 14;

    /// <summary>Whether alternators and other buses reach it through converters alone.</summary>
    public bool IsBehindConverter(string bus) => BehindConverters(bus).Count > 0;

    /// <summary>Whether feeds tie two buses, whatever their contacts are.</summary>
    public bool AreTied(string bus, string other) => group.TryGetValue(bus, out var one) && IsIn(other, one);

    /// <summary>Amperes at the system's voltage for one on the bus: by the ratio of the volts and the worst efficiency on the way.</summary>
    public double AtSystem(string bus) => AtSystem(bus, []);

    private double AtSystem(string bus, HashSet<string> passed)
    {
        if (!group.TryGetValue(bus, out var own) || !passed.Add(own) || BehindConverters(bus) is not { Count: > 0 } converters)
            return Of(bus) / scenario.NominalVoltage;
        return converters.Max(converter => Of(bus) / (Of(converter.From) * converter.Efficiency) * AtSystem(converter.From, [.. passed]));
    }

    private IReadOnlyCollection<Components.Charger> BehindConverters(string bus)
    {
        if (!group.TryGetValue(bus, out var own) || scenario.Alternators.Any(alternator => IsIn(alternator.Bus, own)))
            return [];
        return [.. scenario.Chargers.Where(charger => IsIn(charger.To, own) && !IsIn(charger.From, own))];
    }

    /// <summary>The bus that stands for its group while groups are joined; makes the way to it short.</summary>
    private string First(string bus)
    {
        var first = bus;
        while (!string.Equals(group[first], first, StringComparison.Ordinal))
            first = group[first] = group[group[first]];
        return first;
    }

    private bool IsIn(string bus, string name) => group.TryGetValue(bus, out var own) && string.Equals(own, name, StringComparison.Ordinal);

    private static Voltage Standard(Voltage output)
    {
        foreach (var volts in (double[])[14, 28])
        {
            if (Math.Abs((output.Volts / volts) - 1) <= Near)
                return Voltage.FromVolts(volts);
        }

        return output;
    }
}
