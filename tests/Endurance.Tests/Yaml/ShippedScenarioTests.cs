using Endurance.Scenarios;
using Endurance.Yaml;
using Xunit;

namespace Endurance.Tests.Yaml;

public class ShippedScenarioTests
{
    public static TheoryData<string> Files => [.. Names];

    internal static IEnumerable<string> Names => Directory.GetFiles(Folders.Scenarios, "*.yaml").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal);

    /// <summary>One of the files.</summary>
    internal static Scenario Read(string file) => ScenarioReader.ReadFile(Path.Combine(Folders.Scenarios, file)).Scenario!;

    [Theory]
    [MemberData(nameof(Files))]
    public void Scenario_AsShipped_ReadsWithoutDiagnostics(string file)
    {
        var result = ScenarioReader.ReadFile(Path.Combine(Folders.Scenarios, file));

        Assert.Equal("", DiagnosticRenderer.Render(result.Diagnostics));
        Assert.NotNull(result.Scenario);
        Assert.NotEmpty(result.Scenario.FailureCases);
        Assert.NotEmpty(result.Scenario.Requirements);
        Assert.All(result.Layouts, layout => Assert.Equal("", DiagnosticRenderer.Render(ScenarioReader.ReadFile(Path.Combine(Folders.Scenarios, file), layout).Diagnostics)));
    }

    [Fact]
    public void Folder_AsShipped_HoldsEightScenarios() => Assert.Equal(8, Names.Count());

    [Fact]
    public void Starter_ReadsWithoutDiagnostics()
    {
        var result = ScenarioReader.ReadText("starter.yaml", StarterScenario.Text);

        Assert.Equal("", DiagnosticRenderer.Render(result.Diagnostics));
        Assert.NotNull(result.Scenario);
    }
}
