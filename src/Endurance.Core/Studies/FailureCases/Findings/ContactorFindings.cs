using Endurance.Components;
using Endurance.Findings;
using Endurance.Scenarios;

namespace Endurance.Studies.FailureCases.Findings;

/// <summary>Contactors whose coils are forgotten, or hang on what they switch.</summary>
internal static class ContactorFindings
{
    public static IEnumerable<Finding> Of(Scenario scenario, FailureCase failureCase) =>
        [.. scenario.Feeds.Where(IsHeldWithoutCurrent).Select(WithoutCurrent), .. Loops(scenario, failureCase)];

    private static bool IsHeldWithoutCurrent(Feed feed) =>
        feed.Contactor is { Coil: null } contactor && contactor.IsClosed != contactor.IsNormallyClosed;

    private static Finding WithoutCurrent(Feed feed) => new("coil-without-current", Severity.Warning, feed.Name, "0 A",
        $"The contactor of {feed.Name} is held by its coil, and no coil current is given: usually 0.5 A to 1 A that the battery loses all the time (common practice, no source). Give `coil`; a latching relay is a switch here.");

    /// <summary>A coil that nothing but its own feed can supply stays off once it has let go.</summary>
    private static IEnumerable<Finding> Loops(Scenario scenario, FailureCase failureCase)
    {
        var sources = CaseSources.RemainingBuses(scenario, failureCase);
        foreach (var feed in scenario.Feeds)
        {
            if (feed.Contactor is not { IsNormallyClosed: false, CoilBus: { } bus })
                continue;
            Feed[] others = [.. scenario.Feeds.Where(other => other != feed)];
            if (sources.IsEmpty || Reach.From(sources, others, scenario.Chargers).Contains(bus))
                continue;
            yield return new Finding("coil-fed-by-itself", Severity.Warning, feed.Name, bus,
                $"The coil of {feed.Name} hangs on {bus}, which in this case only {feed.Name} itself can feed: once it lets go it never closes again. Feed the coil from {feed.From}.");
        }
    }
}
