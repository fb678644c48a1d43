using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Findings;
using Endurance.Library;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.Wiring;

/// <summary>Judges every wire of known gauge and length by the tables of FAA AC 43.13-1B, chapter 11.</summary>
public static class WiringStudy
{
    private sealed record Branch(string Name, Voltage Nominal, WireRun Run, ImmutableArray<Protection> Protections, bool HasSwitch, LoadType GuessedType);

    /// <summary>Simulates every failure case and the aircraft as drawn, then judges.</summary>
    /// <exception cref="BrokenOffException">Not even the start of any case can be computed.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static WiringResult Run(Scenario scenario, WiringOptions options, CancellationToken cancellation = default)
    {
        var voltages = new BusVoltages(scenario);
        ImmutableArray<Branch> branches = [.. Feeds(scenario, voltages), .. Loads(scenario, voltages)];
        var judged = branches.Select(branch => branch.Name).ToHashSet(StringComparer.Ordinal);
        var names = scenario.Feeds.Select(feed => feed.Name).Concat(scenario.Loads.Select(load => load.Name));
        var (currents, leftOut) = BranchCurrents.Of(scenario, cancellation);
        return new WiringResult(
            [.. branches.Select(branch => Row(scenario, options, branch, currents[branch.Name]))],
            [.. names.Where(name => !judged.Contains(name))],
            WiringAssumptions.Of(scenario, options)) { LeftOut = leftOut };
    }

    private static IEnumerable<Branch> Feeds(Scenario scenario, BusVoltages voltages) =>
        from feed in scenario.Feeds
        let run = WireRun.Of(feed.Wire, feed.Return)
        where run is not null
        let nominal = voltages.Of(feed.To)
        let types = scenario.Loads.Where(load => string.Equals(load.Bus, feed.To, StringComparison.Ordinal)).Select(LoadTypeGuess.Of)
        select new Branch(feed.Name, nominal, run, Fitted(feed.Breaker, feed.Fuse, feed.FusibleLink), feed.Switch is not null, LoadTypeGuess.Hardest(types, nominal));

    private static IEnumerable<Branch> Loads(Scenario scenario, BusVoltages voltages) =>
        from load in scenario.Loads
        let run = WireRun.Of(load.Wire, load.Return)
        where run is not null
        select new Branch(load.Name, voltages.Of(load.Bus), run, Fitted(load.Breaker, load.Fuse), load.Switch is not null, LoadTypeGuess.Of(load));

    private static ImmutableArray<Protection> Fitted(params ReadOnlySpan<Protection?> protections)
    {
        var fitted = ImmutableArray.CreateBuilder<Protection>();
        foreach (var protection in protections)
        {
            if (protection is not null)
                fitted.Add(protection);
        }

        return fitted.ToImmutable();
    }

    private static WiringRow Row(Scenario scenario, WiringOptions options, Branch branch, BranchCurrent current)
    {
        var limits = AllowableDrop.For(branch.Nominal);
        var tables = new WireTables(options, limits, branch.Protections.MinBy(protection => protection.Rating));
        var run = branch.Run;
        var isShort = run.Drop(current.Short) / limits.Intermittent.Value > run.Drop(current.Steady) / limits.Continuous;
        var limit = isShort ? limits.Intermittent.Value : limits.Continuous;
        var deciding = isShort ? current.Short : current.Steady;
        var rating = tables.Rating(run.Thinnest);
        var row = new WiringRow
        {
            Part = branch.Name,
            Run = run,
            Current = current,
            IsShortDeciding = isShort,
            Drop = run.Drop(deciding),
            Limit = limit,
            LongestRun = run.LongestFor(deciding, limit),
            Rating = rating,
            HotConductor = rating is { } greatest ? WireRun.ConductorTemperature(scenario.Ambient, tables.InsulationLimit, current.Steady, greatest) : null,
            Protection = tables.Protection,
            LargestProtection = tables.LargestProtection(run.Thinnest),
            Switch = branch.HasSwitch ? Switch(options, branch, current) : null,
            SmallestGauge = tables.Smallest(run, current),
            Findings = [],
        };
        return row with { Findings = WiringFindings.Of(row, scenario.Ambient) };
    }

    private static SwitchNeed Switch(WiringOptions options, Branch branch, BranchCurrent current)
    {
        var isGuess = !options.LoadTypes.TryGetValue(branch.Name, out var type);
        if (isGuess)
            type = branch.GuessedType;
        var carried = current.Steady > Current.Zero ? current.Steady : current.Short;
        return new SwitchNeed(type, isGuess, carried * SwitchDerating.Factor(type, branch.Nominal));
    }
}
