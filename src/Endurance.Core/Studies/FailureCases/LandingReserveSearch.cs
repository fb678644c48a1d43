using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.FailureCases;

/// <summary>Searches the latest minute to begin the approach, each try a full run with the landing loads connected then.</summary>
internal sealed class LandingReserveSearch(
    Scenario scenario, Simulator simulator, FailureCase failureCase, Landing landing, SimulationOptions options, CancellationToken cancellation)
{
    private const int GridIntervals = 12;
    private static readonly Duration Accuracy = Duration.FromSeconds(0.3);

    /// <summary>Adds the reserve to a judged case that has a landing; others pass as they are.</summary>
    public static CaseResult AddTo(
        CaseResult judged, Scenario scenario, Simulator simulator, FailureCase failureCase, SimulationOptions options, CancellationToken cancellation)
    {
        if ((failureCase.Landing ?? scenario.Landing) is not { } landing)
            return judged;
        var search = new LandingReserveSearch(scenario, simulator, failureCase, landing, options with { SampleInterval = null }, cancellation);
        return search.Add(judged);
    }

    private CaseResult Add(CaseResult judged)
    {
        // The loss without landing loads bounds the search: nobody can still be in the air with everything required after it.
        var end = scenario.Horizon - landing.Lasts;
        var last = judged.Endurance is { } lost && lost < end ? lost : end;
        if (last < Duration.Zero || !IsCovered(Duration.Zero))
            return With(judged, null, isEverCovered: false, Uncovered());

        var grid = Enumerable.Range(1, GridIntervals).Select(i => last * ((double)i / GridIntervals)).Select(time => (Time: time, IsCovered: IsCovered(time))).ToList();
        var firstUncovered = grid.FindIndex(point => !point.IsCovered);
        if (firstUncovered < 0)
            return With(judged, null, isEverCovered: true);
        var latest = Bisect(firstUncovered == 0 ? Duration.Zero : grid[firstUncovered - 1].Time, grid[firstUncovered].Time);
        return grid.FindLastIndex(point => point.IsCovered) > firstUncovered
            ? With(judged, latest, isEverCovered: true, Patchy(latest))
            : With(judged, latest, isEverCovered: true);
    }

    private CaseResult With(CaseResult judged, Duration? latest, bool isEverCovered, params ReadOnlySpan<Finding> findings) => judged with
    {
        LandingReserve = new LandingReserve(landing, latest, isEverCovered),
        Findings = [.. judged.Findings, .. findings, .. Unpowered(latest ?? Duration.Zero)],
    };

    /// <summary>Loads switched on for the approach that do not last it.</summary>
    private IEnumerable<Finding> Unpowered(Duration approach) =>
        from load in Approach(approach).Loads
        where landing.Connect.Contains(load.Name, StringComparer.Ordinal) && load.TimePowered is { } lost && lost < approach + landing.Lasts
        select new Finding("landing-load-unpowered", Severity.Caution, load.Name, Minutes(approach),
            $"{load.Name} is wanted for the approach, but begun at {Minutes(approach)} it is not powered to the ground. Feed it from a bus that lives then, or count on landing without it.");

    private Duration Bisect(Duration covered, Duration uncovered)
    {
        while (uncovered - covered > Accuracy)
        {
            var middle = (covered + uncovered) / 2;
            if (IsCovered(middle))
                covered = middle;
            else
                uncovered = middle;
        }

        return covered;
    }

    private bool IsCovered(Duration approach) =>
        Judgement.Of(scenario, failureCase, Approach(approach)).Endurance is not { } lost || lost >= approach + landing.Lasts;

    private SimulationResult Approach(Duration approach)
    {
        var step = new TimelineStep
        {
            Trigger = new AtTime(approach),
            Actions = [.. landing.Connect.Select(load => new TimelineAction(ActionVerb.Connect, load))],
        };
        return simulator.RunUntilBreakOff(failureCase with { Timeline = [.. failureCase.Timeline, step] }, options, cancellation);
    }

    private Finding Uncovered() => new("landing-not-covered", Severity.Warning, failureCase.Name, Minutes(landing.Lasts),
        $"Even an approach begun at zero loses something required before the ground, {Minutes(landing.Lasts)} later. Shed more, or carry more charge.");

    private Finding Patchy(Duration latest) => new("landing-reserve-patchy", Severity.Caution, failureCase.Name, Minutes(latest),
        $"Begun after {Minutes(latest)} the approach fails, and begun later still it succeeds again, because steps shed loads in between. The earlier limit is given.");

    private static string Minutes(Duration time) => FormattableString.Invariant($"{time.Minutes:0.#} min");
}
