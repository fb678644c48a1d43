using Endurance.Scenarios;
using Endurance.Studies.FailureCases;
using Endurance.Yaml;

namespace Endurance.Tests.Studies;

/// <summary>Scenarios as a user writes them.</summary>
internal static class Scenarios
{
    public static Scenario Read(string text)
    {
        var result = ScenarioReader.ReadText("test.yaml", text);
        Assert.Equal("", DiagnosticRenderer.Render([.. result.Diagnostics.Where(diagnostic => diagnostic.Severity == Endurance.Findings.Severity.Error)]));
        return result.Scenario!;
    }

    /// <summary>The first case, judged.</summary>
    public static CaseResult JudgeFirst(this Scenario scenario) => scenario.Judge(scenario.FailureCases[0]);
}
