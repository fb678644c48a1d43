using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.Adjustment;
using Endurance.Studies.FailureCases;
using Endurance.Studies.Sizing;
using Endurance.Tests.Yaml;
using Endurance.Yaml;

namespace Endurance.Tests.Studies;

/// <summary>What sizing finds for the shipped scenarios, put into the scenario by other means and run.</summary>
public sealed class ShippedSizingTests
{
    [Theory]
    [MemberData(nameof(ShippedScenarioTests.Files), MemberType = typeof(ShippedScenarioTests))]
    public void Answer_RunAgain_MeetsTheRequirementWithNothingToSpare(string file)
    {
        var scenario = ShippedScenarioTests.Read(file);
        var answered = 0;
        foreach (var question in Questions(scenario))
        {
            var limit = SizingStudy.Answer(scenario, question, new SimulationOptions()).Limit;
            if (limit is not { Limit: { } edge, IsBeyondRange: false })
                continue;

            var (meets, margin) = Run(With(scenario, question, edge));

            Assert.True(meets, $"{file} {question}");
            Assert.True(margin is >= 1 and < 1.001, FormattableString.Invariant($"{file} {question} {edge}: {margin}"));
            answered++;
        }

        // Of a scenario that fails whatever is sized there is no edge.
        Assert.True(answered > 0 || !Run(scenario).Meets, $"{file} has no question with an edge");
    }

    private static IEnumerable<SizingQuestion> Questions(Scenario scenario) =>
    [
        .. scenario.Batteries.Select(battery => new SizingQuestion { Find = SizingFind.Capacity, Subject = battery.Name }),
        .. scenario.Batteries.Select(battery => new SizingQuestion { Find = SizingFind.Health, Subject = battery.Name }),
        new SizingQuestion { Find = SizingFind.Load, Subject = scenario.EssentialBus! },
        .. SizingStudy.HasStepsToDelay(scenario, shedOnly: false) ? [new SizingQuestion { Find = SizingFind.Delay, Subject = "" }] : Array.Empty<SizingQuestion>(),
        .. SizingStudy.HasStepsToDelay(scenario, shedOnly: true) ? [new SizingQuestion { Find = SizingFind.ShedTime, Subject = "" }] : Array.Empty<SizingQuestion>(),
    ];

    private static Scenario With(Scenario scenario, SizingQuestion question, double edge) => question.Find switch
    {
        SizingFind.Capacity => AdjustableQuantities.Find(scenario, question.Subject + ".capacity")!.Set(scenario, edge),
        SizingFind.Health => AdjustableQuantities.Find(scenario, question.Subject + ".health")!.Set(scenario, edge),
        SizingFind.Load => scenario with { Loads = scenario.Loads.Add(Parts.Amperes("further", question.Subject, edge) with { IsEssential = false }) },
        SizingFind.Delay => Later(scenario, edge, ActionVerb.Open, ActionVerb.Close, ActionVerb.Shed, ActionVerb.Connect, ActionVerb.Start, ActionVerb.Restore, ActionVerb.Select),
        _ => Later(scenario, edge, ActionVerb.Shed),
    };

    private static Scenario Later(Scenario scenario, double seconds, params ImmutableArray<ActionVerb> verbs)
    {
        var later = Duration.FromSeconds(seconds);
        TimelineStep Moved(TimelineStep step) => !step.Actions.Any(action => verbs.Contains(action.Verb)) ? step : step with
        {
            Trigger = step.Trigger switch
            {
                AtTime at when verbs.Length == 1 || at.Time > Duration.Zero => new AtTime(at.Time + later),
                WhenBelow low => low with { For = low.For + later },
                WhenWarned warned => warned with { RecognisedAfter = warned.RecognisedAfter + later },
                var other => other,
            },
        };
        return scenario with { FailureCases = [.. scenario.FailureCases.Select(one => one with { Timeline = [.. one.Timeline.Select(Moved)] })] };
    }

    private static (bool Meets, double Margin) Run(Scenario scenario)
    {
        var judged = FailureCaseStudy.Run(scenario, scenario.FailureCases, new SimulationOptions()).SelectMany(result => result.Requirements).ToArray();
        return (judged.All(result => result.Verdict == Verdict.Pass), judged.Min(result => result.Endurance is { } lasts ? lasts / result.Requirement.Endure : double.PositiveInfinity));
    }
}
