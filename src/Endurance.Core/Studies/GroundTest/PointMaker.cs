using System.Collections.Immutable;
using Endurance.Scenarios;

namespace Endurance.Studies.GroundTest;

/// <summary>What every point has in common.</summary>
internal static class PointMaker
{
    public static TestPoint Make(
        TestGroup group, string title, ImmutableArray<string> parts, TestSetup setup, ImmutableArray<ExpectedReading> readings, params ImmutableArray<string> remarks) => new()
        {
            Group = group,
            Title = title,
            Parts = parts,
            Configuration = setup.Sentences,
            Readings = readings,
            Abort = [.. Abort(setup.Scenario, readings)],
            Remarks = remarks,
            Setup = setup,
        };

    /// <summary>Loads of a bus that can be left on for minutes.</summary>
    public static string[] LastingLoads(Scenario scenario, string bus) =>
        [.. scenario.Loads.Where(load => string.Equals(load.Bus, bus, StringComparison.Ordinal) && !IsShort(scenario, load.Name)).Select(load => load.Name)];

    /// <summary>A load such as a starter, tested for seconds only.</summary>
    public static bool IsShort(Scenario scenario, string name) => scenario.Loads.Any(load =>
        string.Equals(load.Name, name, StringComparison.Ordinal) && Tolerances.Draw(scenario, load) > Tolerances.ShortDraw);

    /// <summary>The largest current and each bus that has to stay dead.</summary>
    private static IEnumerable<string> Abort(Scenario scenario, ImmutableArray<ExpectedReading> readings)
    {
        var most = readings.Where(reading => reading.Kind != ReadingKind.BusVolts).MaxBy(reading => Math.Abs(reading.Predicted));
        if (most is not null)
        {
            var limit = Math.Abs(most.Predicted) * Tolerances.AbortFactor;
            yield return FormattableString.Invariant($"more than {Math.Max(limit, Math.Abs(most.Predicted) + most.Tolerance):0.0} A in {most.Part}");
        }

        foreach (var fed in readings.Where(reading => reading.Kind == ReadingKind.BusVolts && reading.Predicted > Tolerances.StopVolts(scenario, reading.Part)).Take(1))
            yield return FormattableString.Invariant($"{fed.Part} below {Tolerances.StopVolts(scenario, fed.Part) - Tolerances.DeadVolts(scenario, fed.Part):0.0} V");
    }
}
