using Endurance.Findings;
using Endurance.Yaml;
using Xunit;

namespace Endurance.Tests.Yaml;

/// <summary>Each file of the folder Broken against the whole text a user would read.</summary>
public class BrokenScenarioTests
{
    public static TheoryData<string> Files => [.. Directory.GetFiles(Folders.Broken, "*.yaml").Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Scenario_Broken_RendersTheExpectedText(string name)
    {
        var result = ScenarioReader.ReadFile(Path.Combine(Folders.Broken, name + ".yaml"));

        var rendered = DiagnosticRenderer.Render(result.Diagnostics.Select(diagnostic => diagnostic with { File = name + ".yaml" }));
        Assert.Equal(File.ReadAllText(Path.Combine(Folders.Broken, name + ".txt")), rendered);
        Assert.Equal(result.Diagnostics.Any(diagnostic => diagnostic.Severity == Severity.Error), result.Scenario is null);
        Assert.NotEmpty(result.Diagnostics);
    }

    [Fact]
    public void ReadFile_OfAMissingFile_SaysSo()
    {
        var result = ScenarioReader.ReadFile(Path.Combine(Folders.Broken, "no_such_file.yaml"));

        Assert.Null(result.Scenario);
        Assert.Equal("file-not-found", Assert.Single(result.Diagnostics).Code);
    }

    [Fact]
    public void ReadFile_OfAFolder_SaysSo() =>
        Assert.Equal("file-unreadable", Assert.Single(ScenarioReader.ReadFile(Folders.Broken).Diagnostics).Code);

    [Fact]
    public void ReadFile_OfAnEmptyPath_SaysSo() => Assert.Equal("file-unreadable", Assert.Single(ScenarioReader.ReadFile("").Diagnostics).Code);

    [Fact]
    public void ReadText_LargerThanAMebibyte_IsRefused()
    {
        var result = ScenarioReader.ReadText("large.yaml", StarterScenario.Text + new string('#', 1024 * 1024));

        Assert.Equal("file-too-large", Assert.Single(result.Diagnostics).Code);
    }

    [Fact]
    public void ReadText_WithAByteOrderMark_ReadsAsWithout()
    {
        var result = ScenarioReader.ReadText("marked.yaml", "\uFEFF" + StarterScenario.Text);

        Assert.NotNull(result.Scenario);
        Assert.Empty(result.Diagnostics);
    }

    [Fact]
    public void ReadText_WithCarriageReturns_PointsAtTheSameLine()
    {
        var text = StarterScenario.Text.Replace("capacity: 16 Ah", "capacity: 16", StringComparison.Ordinal);
        var unix = ScenarioReader.ReadText("a", text);
        var windows = ScenarioReader.ReadText("a", text.Replace("\n", "\r\n", StringComparison.Ordinal));

        Assert.Equal("missing-unit", Assert.Single(unix.Diagnostics).Code);
        Assert.Equal(DiagnosticRenderer.Render(unix.Diagnostics), DiagnosticRenderer.Render(windows.Diagnostics));
    }

    [Fact]
    public void ReadText_NestedAHundredThousandDeep_IsRefused()
    {
        var result = ScenarioReader.ReadText("deep.yaml", "a: " + new string('[', 100_000));

        Assert.Equal("nested-too-deep", Assert.Single(result.Diagnostics).Code);
    }

    [Fact]
    public void ReadText_WithThousandsOfFaults_StopsReportingAtTwoHundred()
    {
        var text = "endurance: 1\n" + string.Concat(Enumerable.Range(0, 1500).Select(i => $"k{i}: 1\n"));

        var result = ScenarioReader.ReadText("flood.yaml", text);

        Assert.Equal(201, result.Diagnostics.Length);
        Assert.Equal("too-many-diagnostics", result.Diagnostics[^1].Code);
    }
}
