using System.Text.Json;

namespace Endurance.Cli.Tests;

public sealed class CompareCommandTests : IDisposable
{
    private const string Layouts =
        """
        layouts:
          hungry: {loads: {display: {current: 60 A}}}
          bare: {loads: {display: {minimum: null}}}

        """;

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Layouts_OfOneFile_StandAfterTheScenarioAsDrawn()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing + Layouts);

        var run = ProgramRun.InProcess("compare", file, "--format", "json");

        using var json = JsonDocument.Parse(run.Output);
        var layouts = json.RootElement.GetProperty("layouts").EnumerateArray().ToList();
        Assert.Equal(["as drawn", "hungry", "bare"], layouts.Select(layout => layout.GetProperty("name").GetString()));
        Assert.Equal(["pass", "fail", "pass"], layouts.Select(layout => layout.GetProperty("verdict").GetString()));

        // 12.8 V behind 9 mohm at 2 A and at 60 A.
        Assert.Equal(12.782, layouts[0].GetProperty("cases")[0].GetProperty("start_volts").GetDouble(), 1e-4);
        Assert.Equal(12.26, layouts[1].GetProperty("cases")[0].GetProperty("start_volts").GetDouble(), 1e-4);
        Assert.Equal(1, run.ExitCode);
    }

    [Fact]
    public void Layouts_ThatAreAskedSomethingElse_AreSaidToBe()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing + "layouts:\n  hungry: {loads: {display: {current: 60 A}}}\n  thick: {batteries: {ship_battery: {resistance: 8 mohm}}}\n");

        var run = ProgramRun.InProcess("compare", file, "--format", "markdown");

        Assert.Contains("Not like for like: hungry has other loads than as drawn, so its minutes and failures survived answer another question.", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("thick has", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Files_Several_AreNamedByTheirPaths()
    {
        var first = _folder.Write("a.yaml", Scenarios.Passing);
        var second = _folder.Write("b.yaml", Scenarios.Passing + "layouts: {bare: {}}\n");

        var run = ProgramRun.InProcess("compare", first, second, "--format", "csv");

        Assert.Equal(
            [first, first, second, second, $"{second}: bare", $"{second}: bare"],
            run.Output.Split("\r\n", StringSplitOptions.RemoveEmptyEntries)[1..].Select(line => line.Split(',')[0]));
        Assert.Equal(0, run.ExitCode);
    }

    [Theory]
    [InlineData("table", "hungry")]
    [InlineData("markdown", "| hungry |")]
    public void Report_ForPeople_NamesEveryLayoutAndCase(string format, string expected)
    {
        var run = ProgramRun.InProcess("compare", _folder.Write("bench.yaml", Scenarios.Passing + Layouts), "--format", format);

        Assert.Contains(expected, run.Output, StringComparison.Ordinal);
        Assert.Contains("display", run.Output, StringComparison.Ordinal);
        Assert.Empty(run.Error);
    }

    [Fact]
    public void Folder_AskedFor_GetsJsonAndThePictureOfTheCase()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing + Layouts);

        ProgramRun.InProcess("compare", file, "--case", "display_shed", "--out", _folder["out"]);

        Assert.True(File.Exists(Path.Combine(_folder["out"], "compare.json")));
        Assert.True(File.Exists(Path.Combine(_folder["out"], "layouts-display_shed.png")));
        Assert.True(File.Exists(Path.Combine(_folder["out"], "layouts-display_shed.svg")));
    }

    [Fact]
    public void Case_OfAnotherName_Exits2WithTheNearest()
    {
        var run = ProgramRun.InProcess("compare", _folder.Write("bench.yaml", Scenarios.Passing), "--case", "display_sed");

        Assert.StartsWith("endurance: --case: there is no failure case 'display_sed'. Did you mean 'display_shed'?", run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Output);
        Assert.Equal(2, run.ExitCode);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("compare")]
    public void Layout_Wrong_Exits2AndIsToldByName(string command)
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing + "layouts: {odd: {loads: {display: {bus: main_buss}}}}\n");

        var run = ProgramRun.InProcess(command, file);

        Assert.Contains("in the layout `odd`: ", run.Error, StringComparison.Ordinal);
        Assert.Contains("did you mean `main_bus`?", run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Output);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void Layout_Run_GivesItsOwnAnswer()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing + Layouts);

        var run = ProgramRun.InProcess("run", file, "--layout", "hungry", "--quiet");

        Assert.StartsWith("Bench, layout hungry\n", run.Output, StringComparison.Ordinal);
        Assert.Equal(1, run.ExitCode);
        Assert.Equal(0, ProgramRun.InProcess("run", file).ExitCode);
    }

    [Fact]
    public void Layout_RunUnderAnotherName_Exits2WithTheNearest()
    {
        var run = ProgramRun.InProcess("run", _folder.Write("bench.yaml", Scenarios.Passing + Layouts), "--layout", "hungri");

        Assert.Contains("error[unknown-layout]: there is no layout `hungri`", run.Error, StringComparison.Ordinal);
        Assert.Contains("did you mean `hungry`?", run.Error, StringComparison.Ordinal);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void Comparison_Cancelled_Exits130()
    {
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();

        var run = ProgramRun.InProcess(cancelled.Token, "compare", _folder.Write("bench.yaml", Scenarios.Passing));

        Assert.Equal(130, run.ExitCode);
        Assert.Empty(run.Output);
    }
}
