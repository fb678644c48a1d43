using System.Diagnostics;
using System.Globalization;

namespace Endurance.Cli.Tests;

/// <summary>The program as its own process: what only streams, signals and the environment can show.</summary>
public sealed class ProcessTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Process_RequirementMet_ExitsZero()
    {
        var run = ProgramRun.AsProcess("run", _folder.Write("bench.yaml", Scenarios.Passing));

        Assert.Contains("plain_discharge", run.Output, StringComparison.Ordinal);
        Assert.Empty(run.Error);
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public void Process_RequirementNotMet_Exits1() =>
        Assert.Equal(1, ProgramRun.AsProcess("run", _folder.Write("bench.yaml", Scenarios.Failing)).ExitCode);

    [Fact]
    public void Process_ScenarioWrong_Exits2WithoutAStackTrace()
    {
        var run = ProgramRun.AsProcess("run", _folder.Write("bench.yaml", Scenarios.Wrong));

        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Output);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void Process_SameScenarioTwice_GivesTheSameBytes()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);

        Assert.Equal(ProgramRun.AsProcess("run", file), ProgramRun.AsProcess("run", file));
    }

    [Theory]
    [InlineData("table")]
    [InlineData("csv")]
    [InlineData("json")]
    public void Process_GermanCulture_GivesTheSameBytes(string format)
    {
        var file = _folder.Write("bench.yaml", Scenarios.Failing);
        string[] arguments = ["run", file, "--format", format];

        var german = ProgramRun.AsProcess(Environment("LANG", "de_DE.UTF-8", "LC_ALL", "de_DE.UTF-8"), arguments);

        Assert.Equal(ProgramRun.AsProcess(arguments), german);
    }

    [Theory]
    [InlineData("Übungsstück 5 mΩ", "LC_ALL", "C.UTF-8", "LANG", "C")]
    [InlineData("Übungsstück 5 mΩ", "LC_ALL", "", "LANG", "de_DE.utf8")]
    [InlineData("Ubungsstuck 5 mohm", "LC_ALL", "C", "LANG", "de_DE.UTF-8")]
    [InlineData("Ubungsstuck 5 mohm", "LC_ALL", "", "LANG", "POSIX")]
    [InlineData("Ubungsstuck 5 mohm", "LC_CTYPE", "de_DE.ISO-8859-1", "LANG", "C.UTF-8")]
    public void Process_TitleBeyondAscii_FollowsTheLocale(string title, params string[] environment)
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing.Replace("title: Bench", "title: Übungsstück 5 mΩ", StringComparison.Ordinal));

        var run = ProgramRun.AsProcess(Environment(environment), "run", file);

        Assert.StartsWith(title + "\n", run.Output, StringComparison.Ordinal);
        Assert.Equal(title.StartsWith('U'), run.Output.All(char.IsAscii));
    }

    [Theory]
    [InlineData("json")]
    [InlineData("csv")]
    [InlineData("markdown")]
    public void Process_LocaleC_WritesUtf8ForProgramsAndFiles(string format)
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing.Replace("plain_discharge", "übung", StringComparison.Ordinal));
        string[] arguments = ["run", file, "--format", format];

        Assert.Contains("übung", ProgramRun.AsProcess(Environment("LC_ALL", "C"), arguments).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Process_LocaleC_TellsMistakesInAscii()
    {
        var run = ProgramRun.AsProcess(Environment("LC_ALL", "C"), "check", _folder.Write("bench.yaml", Scenarios.Passing.Replace("main_bus, current", "größe, current", StringComparison.Ordinal)));

        Assert.Contains("grosse", run.Error, StringComparison.Ordinal);
        Assert.All(run.Error, character => Assert.True(char.IsAscii(character)));
    }

    [UnixFact]
    public void ClosedPipe_WhileWriting_IsSilentAndKeepsTheExitCode()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Failing);
        var code = _folder["code"];

        // The reader ends at once, before the program has written anything.
        var run = ProgramRun.InShell("(dotnet \"$0\" run \"$1\"; echo $? > \"$2\") | true", file, code);

        Assert.Empty(run.Error);
        Assert.Equal("1", File.ReadAllText(code).Trim());
    }

    [UnixFact]
    public void FullDevice_AsOutput_Exits3WithOneLine()
    {
        if (!File.Exists("/dev/full"))
            return;

        var run = ProgramRun.InShell("dotnet \"$0\" --help > /dev/full");

        Assert.Equal("endurance: could not write the result: No space left on device\n", run.Error);
        Assert.Equal(3, run.ExitCode);
    }

    [Fact]
    public void UnwritableFolder_BehindAFile_Exits2WithOneLine()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);

        var run = ProgramRun.AsProcess("run", file, "--no-plots", "--out", Path.Combine(file, "out"));

        Assert.StartsWith($"endurance: cannot write to {Path.Combine(file, "out")}: ", run.Error, StringComparison.Ordinal);
        Assert.Single(run.Error.TrimEnd().Split('\n'));
        Assert.Empty(run.Output);
        Assert.Equal(2, run.ExitCode);
    }

    [InterruptFact]
    public void Interruption_OfALongRun_Exits130WithoutAFolder() => AssertStops("-INT");

    [UnixFact]
    public void Termination_OfALongRun_Exits130WithoutAFolder() => AssertStops("-TERM");

    private void AssertStops(string signal)
    {
        var file = _folder.Write("bench.yaml", Scenarios.Long);
        using var process = ProgramRun.Start(Environment(), "run", file, "--out", _folder["out"]);

        // The warning is told before the run begins, and from then on the program can be interrupted.
        Assert.NotNull(process.StandardError.ReadLine());
        using (var kill = Process.Start("kill", [signal, process.Id.ToString(CultureInfo.InvariantCulture)]))
            kill.WaitForExit();

        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.Empty(output);
        Assert.Equal(130, process.ExitCode);
        Assert.False(Path.Exists(_folder["out"]));
    }

    private static Dictionary<string, string> Environment(params string[] pairs) =>
        pairs.Chunk(2).ToDictionary(pair => pair[0], pair => pair[1], StringComparer.Ordinal);
}
