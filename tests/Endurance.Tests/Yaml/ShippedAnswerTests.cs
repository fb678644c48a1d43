using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Yaml;

namespace Endurance.Tests.Yaml;

/// <summary>The numbers of every shipped scenario rest on the physics and not on the steps taken.</summary>
public class ShippedAnswerTests
{
    /// <summary>Half of the last digit that a report could show.</summary>
    private const double Minutes = 0.005;

    private const double Energy = 1e-9;

    public static TheoryData<string, string> Cases
    {
        get
        {
            var cases = new TheoryData<string, string>();
            foreach (var file in ShippedScenarioTests.Names)
            {
                foreach (var failureCase in ShippedScenarioTests.Read(file).FailureCases)
                    cases.Add(file, failureCase.Name);
            }

            return cases;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Case_OfAShippedScenario_BalancesItsEnergy(string file, string failureCase) =>
        Assert.InRange(Math.Abs(Run(file, failureCase, 1).EnergyResidual), 0, Energy);

    [Theory]
    [MemberData(nameof(Cases))]
    public void Case_OfAShippedScenario_KeepsItsMinutesAtHalfTheTolerance(string file, string failureCase)
    {
        var told = Times(Run(file, failureCase, 1)).ToList();
        var finer = Times(Run(file, failureCase, 0.5)).ToList();

        Assert.Equal(finer.Select(time => time.What), told.Select(time => time.What));
        foreach (var (a, b) in told.Zip(finer))
            Assert.Equal(b.Minutes, a.Minutes, Minutes);
    }

    private static SimulationResult Run(string file, string failureCase, double finer)
    {
        var scenario = ShippedScenarioTests.Read(file);
        var options = new SimulationOptions();
        return new Simulator(scenario).Run(
            scenario.FailureCases.Single(candidate => candidate.Name == failureCase), options with { Tolerance = options.Tolerance * finer });
    }

    /// <summary>Every minute a report can print; one that is not reached counts as infinite.</summary>
    private static IEnumerable<(string What, double Minutes)> Times(SimulationResult run) =>
    [
        .. run.Events.Select(happened => (happened.What, happened.Time.Minutes)),
        .. run.Loads.SelectMany(load => Both(load.Name, load.TimePowered, load.TimeLostForGood)),
        .. run.Buses.SelectMany(bus => Both(bus.Name, bus.TimeToCutoff, bus.TimeToCutoffForGood)),
        .. run.Batteries.SelectMany(battery => Both(battery.Name, battery.TimeToExhaustion, battery.TimeToExhaustion)),
        ("end", run.End.Minutes),
    ];

    private static IEnumerable<(string What, double Minutes)> Both(string name, Duration? first, Duration? last) =>
        [(name, first.Minutes()), (name, last.Minutes())];
}
