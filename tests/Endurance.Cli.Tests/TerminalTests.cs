using System.Runtime.CompilerServices;

namespace Endurance.Cli.Tests;

/// <summary>Every command on the terminals that there are: none at all, narrow, dumb, without colour, without UTF-8.</summary>
public sealed class TerminalTests : IDisposable
{
    private const char Escape = '\u001B';

    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string> Commands =>
    [
        "run FLOAT", "compare LAYOUTS", "size FLOAT --battery ship_battery", "failures BENCH", "spread BENCH --samples 50", "sweep BENCH --vary ship_battery.health --from 100% --to 80% --steps 2",
        "wiring FLOAT", "loads FLOAT", "check FLOAT", "battery FLOAT", "parts", "explain droop", "explain", "testcard BENCH", "fit LOG", "schema", "completion bash", "--help", "run --help", "--version",
    ];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Commands))]
    public void Output_ToAPipeInLocaleC_IsPlainAscii(string command)
    {
        var run = ProgramRun.AsProcess(Environment("LC_ALL", "C", "TERM", "xterm-256color"), Arguments(command));

        Assert.InRange(run.ExitCode, 0, 1);
        Assert.NotEmpty(run.Output);
        Assert.DoesNotContain(Escape, run.Output + run.Error);
        Assert.DoesNotContain('\r', run.Output + run.Error);
        if (command is not "schema")
            Assert.Equal("", string.Concat((run.Output + run.Error).Where(character => !char.IsAscii(character))));
    }

    [Theory]
    [InlineData("run FLOAT")]
    [InlineData("compare LAYOUTS")]
    [InlineData("failures BENCH")]
    [InlineData("wiring FLOAT")]
    [InlineData("loads FLOAT")]
    [InlineData("battery FLOAT")]
    [InlineData("parts")]
    [InlineData("explain")]
    public void Output_InSixtyColumns_FitsThem(string command)
    {
        var run = ProgramRun.AsProcess(Environment("COLUMNS", "60"), Arguments(command));

        Assert.All(run.Output.Split('\n'), line => Assert.True(line.Length <= 60, line));
    }

    [ShellTheory("script")]
    [InlineData(true, "xterm", "")]
    [InlineData(false, "xterm", "1")]
    [InlineData(false, "dumb", "")]
    public void Terminal_GetsColourWhereItWantsIt(bool expected, string terminal, string noColour)
    {
        var output = OnATerminal(Environment("TERM", terminal, "NO_COLOR", noColour), "run BENCH");

        Assert.Contains("plain_discharge", output, StringComparison.Ordinal);
        Assert.Equal(expected, output.Contains($"{Escape}[1m", StringComparison.Ordinal));
        Assert.Equal(expected, output.Contains($"{Escape}[0m", StringComparison.Ordinal));
    }

    [ShellTheory("script")]
    [InlineData(true, "xterm", "")]
    [InlineData(false, "xterm", "--no-progress")]
    [InlineData(false, "xterm", "--quiet")]
    [InlineData(false, "dumb", "")]
    public void Terminal_ShowsProgressWhereItCan(bool expected, string terminal, string option) =>
        Assert.Equal(expected, OnATerminal(Environment("TERM", terminal), $"failures BENCH {option}").Contains("100 % of ", StringComparison.Ordinal));

    [ShellTheory("script")]
    [InlineData("size BENCH --find health")]
    [InlineData("compare BENCH")]
    [InlineData("spread BENCH --samples 50")]
    public void Terminal_ShowsTheProgressOfEveryStudy(string command) =>
        Assert.Contains(" % of ", OnATerminal(Environment("TERM", "xterm"), command), StringComparison.Ordinal);

    private string OnATerminal(Dictionary<string, string> environment, string command)
    {
        var line = string.Join(' ', Arguments(command).Select(argument => $"'{argument}'"));
        return ProgramRun.InShell(environment, "script -qec \"dotnet '$0' $1\" /dev/null < /dev/null", line).Output;
    }

    private string[] Arguments(string command) => [.. command.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(word => word switch
    {
        "FLOAT" => Shipped("floatplane.yaml"),
        "LAYOUTS" => Shipped("layouts.yaml"),
        "BENCH" => _folder.Write("bench.yaml", Scenarios.Passing + "tolerances:\n  ship_battery.health: {uniform: [80 %, 100 %]}\n"),
        "LOG" => _folder.Write("log.csv", "time_min,volts,amps\n" + string.Concat(Enumerable.Range(0, 60).Select(minute => FormattableString.Invariant($"{minute * 10},{12.6 - (minute * 0.035):0.000},1\n")))),
        _ => word,
    })];

    private static Dictionary<string, string> Environment(params string[] pairs) =>
        pairs.Chunk(2).ToDictionary(pair => pair[0], pair => pair[1], StringComparer.Ordinal);

    private static string Shipped(string name, [CallerFilePath] string path = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(path)!, "..", "..", "scenarios", name));
}
