using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;

namespace Endurance.Studies.LoadAnalysis;

/// <summary>Adds up what is drawn by bus and phase of flight, and sets it against alternators and batteries.</summary>
public static class LoadAnalysisStudy
{
    /// <summary>Loads are taken at the nominal voltage of their bus.</summary>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static LoadAnalysisResult Run(Scenario scenario, CancellationToken cancellation = default)
    {
        var items = LoadItems.Of(scenario);
        ImmutableArray<string?> phases = [null, .. items.Select(item => item.Phase).Where(phase => phase is not null).Distinct(StringComparer.Ordinal)];
        var cases = FailureCaseStudy.Run(scenario, scenario.FailureCases, new SimulationOptions(), cancellation);
        ImmutableArray<AlternatorShare> shares = [.. phases.SelectMany(phase => Shares(scenario, items, phase))];
        return new LoadAnalysisResult(
            items,
            [.. phases.SelectMany(phase => Totals(scenario, items, phase))],
            shares,
            [.. scenario.FailureCases.Zip(cases, (failureCase, result) => AmpMinuteStudy.Of(scenario, items, failureCase, result)).OfType<AmpMinuteComparison>()],
            [.. shares.Where(share => !share.IsWithin).Select(Overloaded), .. Unsaid(items)]) { LeftOut = LeftOut.Of(cases) };
    }

    /// <summary>A load belongs to its own phase whether it is drawn on or off; without a phase it counts while it is on.</summary>
    private static bool Counts(LoadItem item, string? phase) =>
        item.Phase is null ? item.IsOn : string.Equals(item.Phase, phase, StringComparison.Ordinal);

    private static IEnumerable<LoadTotal> Totals(Scenario scenario, ImmutableArray<LoadItem> items, string? phase)
    {
        var drawing = items.Where(item => Counts(item, phase)).ToList();
        foreach (var bus in scenario.Buses.Select(bus => bus.Name))
        {
            var own = drawing.Where(item => string.Equals(item.Bus, bus, StringComparison.Ordinal)).ToList();
            if (own.Count > 0)
                yield return Total(bus, phase, own, _ => 1);
        }

        yield return Total(null, phase, drawing, item => item.AtSystem);
    }

    private static LoadTotal Total(string? bus, string? phase, IReadOnlyCollection<LoadItem> items, Func<LoadItem, double> factor) => new(
        bus,
        phase,
        Sum(items.Where(item => !item.IsIntermittent), item => item.Mean * factor(item)),
        Sum(items.Where(item => item.IsIntermittent), item => item.Mean * factor(item)),
        Sum(items, item => item.Peak * factor(item)));

    private static Current Sum(IEnumerable<LoadItem> items, Func<LoadItem, Current> part) =>
        items.Aggregate(Current.Zero, (sum, item) => sum + part(item));

    private static IEnumerable<AlternatorShare> Shares(Scenario scenario, ImmutableArray<LoadItem> items, string? phase)
    {
        var state = new WiringState(scenario);
        var groups = new List<(List<Alternator> Alternators, HashSet<string> Buses)>();
        foreach (var alternator in scenario.Alternators.Where(state.Gives))
        {
            var reached = state.ReachedFrom([alternator.Bus]);
            var shared = groups.Where(group => group.Buses.Overlaps(reached)).ToList();
            groups.RemoveAll(shared.Contains);
            groups.Add(([.. shared.SelectMany(group => group.Alternators), alternator], [.. shared.SelectMany(group => group.Buses), .. reached]));
        }

        return groups.Select(group => new AlternatorShare(
            [.. group.Alternators.Select(alternator => alternator.Name)],
            phase,
            group.Alternators.Aggregate(Current.Zero, (sum, alternator) => sum + alternator.Rated),
            Total(null, phase, [.. items.Where(item => Counts(item, phase) && group.Buses.Contains(item.Bus))], item => item.AtSystem)));
    }

    private static Finding Overloaded(AlternatorShare share)
    {
        var value = FormattableString.Invariant($"{share.Fraction * 100:0.#} %");
        var when = share.Phase is { } phase ? $" in the phase {phase}" : "";
        return new("alternator-share", Severity.Warning, string.Join(" + ", share.Alternators), value,
            FormattableString.Invariant($"The mean load{when}, {share.Load.Mean.Amperes:0.##} A, is {value} of {share.Rated.Amperes:0.##} A. Without a placard or a monitor {AlternatorShare.Limit * 100:0} % is the limit ({AlternatorShare.Source}); shed something, or fit a larger alternator."));
    }

    private static IEnumerable<Finding> Unsaid(ImmutableArray<LoadItem> items)
    {
        var unsaid = items.Where(item => item.Kind == LoadItemKind.Load && item.Basis is null).Select(item => item.Name).ToList();
        if (unsaid.Count > 0)
        {
            yield return new("basis-not-said", Severity.Information, "loads", FormattableString.Invariant($"{unsaid.Count}"),
                $"Nobody said where these figures came from: {string.Join(", ", unsaid)}. Write basis: manual, plate or measured, and measured_on.");
        }
    }
}
