using System.Text.Json;
using Endurance.Cli.Commands;
using Endurance.Simulation;
using Endurance.Studies;

namespace Endurance.Cli.Tests;

public sealed class RunCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    // 18 Ah at 2 A last 540 min, so within 30 min no approach of 10 min comes too late.
    [Fact]
    public void Landing_Given_AddsTheLatestApproachToJsonAlone()
    {
        var without = _folder.Write("bench.yaml", Scenarios.Passing);
        var with = _folder.Write("landing.yaml", Scenarios.Passing + "landing: {connect: [display], lasts: 10 min}\n");

        Assert.DoesNotContain("latest_approach_minutes", ProgramRun.InProcess("run", without, "--format", "json").Output, StringComparison.Ordinal);
        Assert.Contains("\"latest_approach_minutes\": null", ProgramRun.InProcess("run", with, "--format", "json").Output, StringComparison.Ordinal);
        Assert.Contains("more than 20", ProgramRun.InProcess("run", with).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_RequirementMet_ExitsZeroWithTheResultOnOutputAlone()
    {
        var run = ProgramRun.InProcess("run", _folder.Write("bench.yaml", Scenarios.Passing));

        Assert.Contains("plain_discharge", run.Output, StringComparison.Ordinal);
        Assert.Empty(run.Error);
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public void Run_RequirementNotMet_Exits1WithTheSameReport()
    {
        var run = ProgramRun.InProcess("run", _folder.Write("bench.yaml", Scenarios.Failing));

        Assert.Contains("plain_discharge", run.Output, StringComparison.Ordinal);
        Assert.Empty(run.Error);
        Assert.Equal(1, run.ExitCode);
    }

    [Fact]
    public void Run_OneCaseChatters_Exits2WithItsNameAndEveryCaseOnOutput()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Chattering);

        var run = ProgramRun.InProcess("run", file, "--format", "json");

        using var json = JsonDocument.Parse(run.Output);
        var cases = json.RootElement.GetProperty("cases");
        Assert.Equal("fail", cases[0].GetProperty("verdict").GetString());
        Assert.Equal("display", cases[0].GetProperty("chattering").GetProperty("parts")[0].GetString());
        Assert.Equal(cases[0].GetProperty("endurance_minutes").GetDouble(), cases[0].GetProperty("chattering").GetProperty("minutes").GetDouble());
        Assert.False(cases[1].TryGetProperty("chattering", out _));
        Assert.Matches("^endurance: case plain_discharge: display switches itself on and off without end at minute [0-9.]+[.] Give the load a higher restart voltage", run.Error);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("FAIL, chatters", ProgramRun.InProcess("run", file).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("wiring FILE")]
    [InlineData("loads FILE")]
    [InlineData("compare FILE")]
    [InlineData("report FILE --out PAGE")]
    public void Command_OneCaseChatters_DoesTheRestAndExits2WithItsName(string command)
    {
        var file = _folder.Write("bench.yaml", Scenarios.Chattering);

        var run = ProgramRun.InProcess([.. command.Split(' ').Select(word => word switch { "FILE" => file, "PAGE" => _folder["page.html"], _ => word })]);

        Assert.Contains("endurance: case plain_discharge: display switches itself on and off without end at minute ", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("case display_shed", run.Error, StringComparison.Ordinal);
        Assert.Contains("display", command.StartsWith("report", StringComparison.Ordinal) ? File.ReadAllText(_folder["page.html"]) : run.Output, StringComparison.Ordinal);
        Assert.Equal(2, run.ExitCode);
    }

    [Theory]
    [InlineData(2, BreakOffCause.Chattering)]
    [InlineData(2, BreakOffCause.TooStiff, BreakOffCause.Chattering)]
    [InlineData(3, BreakOffCause.Unsolved, BreakOffCause.TooStiff)]
    public void ExitCode_OfCasesThatBreakOff_IsThatOfTheWorst(int expected, params BreakOffCause[] causes)
    {
        var error = new StringWriter();

        Assert.Equal(expected, ScenarioFile.ExitOf(0, [.. causes.Select(cause => new LeftOut($"case {cause}", new BreakOff { Cause = cause, Parts = ["bus"], Time = default, Words = "it breaks off", Remedy = "Mend it." }))], error));
        Assert.StartsWith($"endurance: case {causes[0]}: it breaks off at minute 0.00. Mend it.", error.ToString(), StringComparison.Ordinal);
        Assert.Equal(causes.Length, error.ToString().Count(character => character == '\n'));
    }

    [Fact]
    public void Run_ScenarioWrong_Exits2WithNothingOnOutput()
    {
        var run = ProgramRun.InProcess("run", _folder.Write("bench.yaml", Scenarios.Wrong));

        Assert.Contains("main_buss", run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Output);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void Run_WithoutFolder_WritesNoFile()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);

        ProgramRun.InProcess("run", file);

        Assert.Equal(["bench.yaml"], TemporaryFolder.Names(_folder.Path));
    }

    [Fact]
    public void Run_OneCase_LeavesTheOthersOut()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);

        var run = ProgramRun.InProcess("run", file, "--case", "display_shed", "--format", "json");

        Assert.Equal(["display_shed"], CaseNames(run.Output));
    }

    [Fact]
    public void Run_TwoCases_StandInTheOrderOfTheScenario()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);

        var run = ProgramRun.InProcess("run", file, "--case", "display_shed", "--case", "plain_discharge", "--format", "json");

        Assert.Equal(["plain_discharge", "display_shed"], CaseNames(run.Output));
    }

    [Fact]
    public void Run_UnknownCase_Exits2WithTheNearestName()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);

        var run = ProgramRun.InProcess("run", file, "--case", "plain_dicharge");

        Assert.Equal(
            "endurance: --case: there is no failure case 'plain_dicharge'. Did you mean 'plain_discharge'? "
            + "The cases are: plain_discharge, display_shed.\n",
            run.Error);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void Run_Doubtful_KeepsTheWarningOutOfTheResult()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Doubtful);

        var run = ProgramRun.InProcess("run", file, "--format", "json");

        Assert.Contains("spare_bus", run.Error, StringComparison.Ordinal);
        Assert.Equal(2, CaseNames(run.Output).Length);
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public void Run_Quiet_IsTheSummaryWithoutWarnings()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Doubtful);

        var quiet = ProgramRun.InProcess("run", file, "--quiet");

        Assert.Empty(quiet.Error);
        Assert.Contains("plain_discharge", quiet.Output, StringComparison.Ordinal);
        Assert.True(quiet.Output.Length < ProgramRun.InProcess("run", file).Output.Length);
    }

    [Fact]
    public void Run_Csv_HasOneRowForEachCaseAndLoad()
    {
        var run = ProgramRun.InProcess("run", _folder.Write("bench.yaml", Scenarios.Passing), "--format", "csv");

        Assert.Equal(3, run.Output.TrimEnd().Split("\r\n").Length);
    }

    [Fact]
    public void Run_IntoFolder_HoldsTracesPlotsAndTheSameResultAsOutput()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);

        var run = ProgramRun.InProcess("run", file, "--format", "json", "--out", _folder["out"]);

        var names = TemporaryFolder.Names(_folder["out"]);
        Assert.Contains("results.json", names);
        Assert.Contains("case-plain_discharge-trace.csv", names);
        Assert.Contains("case-display_shed-trace.csv", names);
        Assert.Contains(names, name => name.EndsWith(".png", StringComparison.Ordinal));
        Assert.Contains(names, name => name.EndsWith(".svg", StringComparison.Ordinal));
        Assert.Equal(run.Output, File.ReadAllText(_folder["out/results.json"]));
        Assert.Equal($"wrote {names.Length - 1} files to {_folder["out"]}\n", run.Error);
    }

    [Fact]
    public void Run_IntoFolderWithoutPlots_HoldsNoPlot()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);

        ProgramRun.InProcess("run", file, "--no-plots", "--out", _folder["out"]);

        Assert.Equal(
            [".endurance-files", "case-display_shed-trace.csv", "case-plain_discharge-trace.csv", "results.json"],
            TemporaryFolder.Names(_folder["out"]));
    }

    [Fact]
    public void Run_AgainIntoFolderForOneCase_RemovesTheOtherTraceAndKeepsForeignFiles()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);
        ProgramRun.InProcess("run", file, "--no-plots", "--out", _folder["out"]);
        _folder.Write("out/notes.txt", "mine");

        var run = ProgramRun.InProcess("run", file, "--no-plots", "--case", "display_shed", "--out", _folder["out"]);

        Assert.Equal(0, run.ExitCode);
        Assert.Equal([".endurance-files", "case-display_shed-trace.csv", "notes.txt", "results.json"], TemporaryFolder.Names(_folder["out"]));
    }

    [Fact]
    public void Run_ForeignFileInTheWay_Exits2UntilForced()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);
        Directory.CreateDirectory(_folder["out"]);
        _folder.Write("out/results.json", "mine");
        string[] arguments = ["run", file, "--no-plots", "--out", _folder["out"]];

        var refused = ProgramRun.InProcess(arguments);

        Assert.Equal(
            $"endurance: {_folder["out/results.json"]} was not written by this program; choose another folder, or replace it with --force\n",
            refused.Error);
        Assert.Equal(2, refused.ExitCode);
        Assert.Empty(refused.Output);
        Assert.Equal(["results.json"], TemporaryFolder.Names(_folder["out"]));
        Assert.Equal(0, ProgramRun.InProcess([.. arguments, "--force"]).ExitCode);
        Assert.NotEqual("mine", File.ReadAllText(_folder["out/results.json"]));
    }

    [Fact]
    public void Run_SampleTooFine_Exits2BeforeAnythingRuns()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);

        var run = ProgramRun.InProcess("run", file, "--sample", "1e-6 s", "--out", _folder["out"]);

        Assert.StartsWith("endurance: --sample: ", run.Error, StringComparison.Ordinal);
        Assert.False(Path.Exists(_folder["out"]));
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void Run_Sample_SetsTheSpacingOfTheTrace()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);

        ProgramRun.InProcess("run", file, "--no-plots", "--sample", "10 min", "--case", "plain_discharge", "--out", _folder["out"]);

        var minutes = File.ReadLines(_folder["out/case-plain_discharge-trace.csv"]).Skip(1).Select(line => line.Split(',')[0]).Distinct(StringComparer.Ordinal);
        Assert.Equal(["0", "10", "20", "30"], minutes);
    }

    [Fact]
    public void Run_AlreadyInterrupted_Exits130WithNothingWritten()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);

        var run = ProgramRun.InProcess(new CancellationToken(canceled: true), "run", file, "--out", _folder["out"]);

        Assert.Equal(130, run.ExitCode);
        Assert.Empty(run.Output);
        Assert.False(Path.Exists(_folder["out"]));
    }

    private static string[] CaseNames(string json)
    {
        using var document = JsonDocument.Parse(json);
        return [.. document.RootElement.GetProperty("cases").EnumerateArray().Select(result => result.GetProperty("name").GetString()!)];
    }
}
