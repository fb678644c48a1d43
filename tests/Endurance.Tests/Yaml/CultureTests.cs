using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using Endurance.Tests.Reports;
using Endurance.Yaml;

namespace Endurance.Tests.Yaml;

/// <summary>The library serves programs that run in any culture: what it says must not follow theirs.</summary>
public class CultureTests
{
    private const string Doubtful = """
        endurance: 1
        system: 14 V
        ambient: 12.5 degC
        horizon: 30.5 min
        batteries:
          ship: {bus: main_bus, ratings: [[20 h, 18 Ah], [1 h, 7.2 Ah]], resistance: 0.12 mohm, emf: [[0 %, 10.9 V], [100 %, 9.85 V]], cells: 5.5}
          aged: {bus: main_bus, chemistry: agm, capacity: 7.2 Ah, rate: 20 h, temperature: -22.5 degC, health: 87.5 %}
        alternators:
          alternator: {bus: main_bus, setpoint: 17.25 V, rated: 40.5 A, limit_idle: 60.5 A, trips_above: 16.25 V}
        buses: {main_bus: {}, other_bus: {cutoff: 16.75 V}}
        feeds:
          link: {from: main_bus, to: other_bus, wire: {gauge: 14 AWG, length: 6 ft}, breaker: 10 A, diode: {kind: silicon, forward: [[1 A, 0.35 V], [2 A, 0.45 V], [15 A, 0.52 V]]}}
        loads: {display: {bus: other_bus, power: 28.5 W, minimum: 10.5 V, restart: 9.25 V, essential: true}}
        failure_cases: {late: {timeline: [{at: 45.5 min, fail: [alternator]}]}}
        requirements: [{loads: essential, endure: 60.5 min}, {loads: essential, endure: 5000.5 h}]
        """;

    [Fact]
    public void Diagnostics_CommaCulture_AreTheSame()
    {
        var read = ScenarioReader.ReadText("doubtful.yaml", Doubtful);
        Assert.Contains(read.Diagnostics, told => told.Message.Contains("17.25 V", StringComparison.Ordinal));
        Assert.Equal(Told(), CommaCulture.Run(Told));

        static string Told() => DiagnosticRenderer.Render(ScenarioReader.ReadText("doubtful.yaml", Doubtful).Diagnostics);
    }

    [Theory]
    [MemberData(nameof(ShippedScenarioTests.Files), MemberType = typeof(ShippedScenarioTests))]
    public void AssumptionsAndFindings_CommaCulture_AreTheSame(string file)
    {
        var told = Told();
        Assert.NotEmpty(told);
        Assert.Equal(told, CommaCulture.Run(Told));

        string[] Told()
        {
            var scenario = ShippedScenarioTests.Read(file);
            var cases = FailureCaseStudy.Run(scenario, scenario.FailureCases, new SimulationOptions(), CancellationToken.None);
            return
            [
                .. scenario.Assumptions.Select(assumption => assumption.Text),
                .. ScenarioRules.Check(scenario).Select(rule => rule.Finding.Message),
                .. cases.SelectMany(result => result.Findings).Select(finding => finding.Message),
            ];
        }
    }
}
