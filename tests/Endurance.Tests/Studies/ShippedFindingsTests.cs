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
        // Its batteries stand in parallel, and its pylon motor outruns the discharge table, to show what the report says of that.
        string[] deliberate = file is "datasheet.yaml" ? ["batteries-joined", "beyond-discharge-points"] : [];

        MakesNone(ShippedScenarioTests.Read(file), deliberate);
    }

    [Fact]
    public void Starter_AsWritten_MakesNoneOfTheUsualMistakes() => MakesNone(Scenarios.Read(StarterScenario.Text));

    private static void MakesNone(Scenario scenario, params string[] except)
    {
        var results = FailureCaseStudy.Run(scenario, scenario.FailureCases, new SimulationOptions());

        Assert.Empty(results.SelectMany(result => result.Findings.Where(finding => finding.Severity >= Severity.Warning && !except.Contains(finding.Code, StringComparer.Ordinal))
            .Select(finding => $"{result.Name}: {finding.Code} {finding.Part} {finding.Value}")));
    }
}
