using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Findings;
using Endurance.Quantities;

namespace Endurance.Scenarios;

/// <summary>An aircraft's electrical system as drawn, the failures to try, and what must survive them.</summary>
/// <remarks>Parts stand in the order of the file. Names are unique over all parts and engines.</remarks>
public sealed record Scenario
{
    public required string Title { get; init; }

    public required SystemVoltage System { get; init; }

    /// <summary>12 V batteries in series that a battery of the system counts for: 1 or 2.</summary>
    public int BatteriesInSeries => System.BatteriesInSeries();

    /// <summary>With an alternator running: 14 V or 28 V.</summary>
    public Voltage NominalVoltage => Voltage.FromVolts(14 * BatteriesInSeries);

    /// <summary>Nominal voltage of its batteries: 12 V or 24 V.</summary>
    public Voltage BatteryVoltage => System.BatteryVoltage();

    public required Temperature Ambient { get; init; }

    /// <summary>Simulated for so long after zero; above zero.</summary>
    public required Duration Horizon { get; init; }

    public ImmutableArray<Bus> Buses { get; init; } = [];

    public ImmutableArray<Battery> Batteries { get; init; } = [];

    public ImmutableArray<Alternator> Alternators { get; init; } = [];

    public ImmutableArray<Feed> Feeds { get; init; } = [];

    public ImmutableArray<Load> Loads { get; init; } = [];

    public ImmutableArray<Charger> Chargers { get; init; } = [];

    public ImmutableArray<GroundPoint> Grounds { get; init; } = [];

    public ImmutableArray<Selector> Selectors { get; init; } = [];

    public ImmutableArray<LowVoltageWarning> Warnings { get; init; } = [];

    /// <summary>For every case that has none of its own.</summary>
    public Landing? Landing { get; init; }

    public ImmutableArray<FailureCase> FailureCases { get; init; } = [];

    public ImmutableArray<Requirement> Requirements { get; init; } = [];

    public ImmutableArray<Tolerance> Tolerances { get; init; } = [];

    public ImmutableArray<BatteryOnOffer> BatteriesOnOffer { get; init; } = [];

    /// <summary>Defaults and library values that stand in for what the file does not say.</summary>
    public ImmutableArray<Assumption> Assumptions { get; init; } = [];

    /// <summary>Engines, in order of first mention by an alternator.</summary>
    public ImmutableArray<string> Engines =>
        [.. Alternators.Where(alternator => alternator.DrivenBy is not null).Select(alternator => alternator.DrivenBy!).Distinct(StringComparer.Ordinal)];

    /// <summary>The bus most essential loads sit on, else the first with a cutoff, else the first; <see langword="null"/> without buses.</summary>
    public string? EssentialBus
    {
        get
        {
            var most = Buses.MaxBy(bus => Loads.Count(load => load.IsEssential && string.Equals(load.Bus, bus.Name, StringComparison.Ordinal)));
            var hasEssential = most is not null && Loads.Any(load => load.IsEssential && string.Equals(load.Bus, most.Name, StringComparison.Ordinal));
            return hasEssential ? most!.Name : (Buses.FirstOrDefault(bus => bus.Cutoff is not null) ?? most)?.Name;
        }
    }

    public ImmutableArray<string> EssentialLoads => [.. Loads.Where(load => load.IsEssential).Select(load => load.Name)];

    /// <summary>Whether a feed conducts at time zero as far as its contacts and the selectors go.</summary>
    public bool IsDrawnClosed(Feed feed) =>
        feed.Switch?.IsClosed != false && feed.Contactor?.IsClosed != false && feed.Breaker?.IsClosed != false && feed.Fuse?.IsClosed != false
        && Selectors.All(selector => selector.Positions.All(position =>
            !string.Equals(position.Feed, feed.Name, StringComparison.Ordinal) || string.Equals(position.Position, selector.At, StringComparison.Ordinal)));
}
