using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using Endurance.Tests.Yaml;
using Endurance.Yaml;

namespace Endurance.Tests.Studies;

public sealed class ShippedFindingsTests
{
    [Theory]
    [MemberData(nameof(ShippedScenarioTests.Files), MemberType = typeof(ShippedScenarioTests))]
    public void Scenario_AsShipped_MakesNoneOfTheUsualMistakes(string file)
    {
        MakesNone(ScenarioReader.ReadFile(Path.Combine(Folders.Scenarios, file)).Scenario!);
    }

    [Fact]
    public void Starter_AsWritten_MakesNoneOfTheUsualMistakes() => MakesNone(Scenarios.Read(StarterScenario.Text));

    private static void MakesNone(Scenario scenario)
    {
        var results = FailureCaseStudy.Run(scenario, scenario.FailureCases, new SimulationOptions());

        Assert.Empty(results.SelectMany(result => result.Findings.Where(finding => finding.Severity >= Severity.Warning)
            .Select(finding => $"{result.Name}: {finding.Code} {finding.Part} {finding.Value}")));
    }
}
