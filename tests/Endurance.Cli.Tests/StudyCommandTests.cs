using System.Globalization;
using System.Text.Json;

namespace Endurance.Cli.Tests;

public sealed class StudyCommandTests : IDisposable
{
    private const string Bench =
        """
        endurance: 1
        title: Bench
        system: 14 V
        batteries:
          main_battery: {bus: main_bus, capacity: 10 Ah, rate: 20 h, peukert: 1, resistance: 10 mohm, emf: [[0 %, 12.0 V], [100 %, 12.0 V]]}
        buses:
          main_bus: {cutoff: 10.5 V}
        loads:
          display: {bus: main_bus, current: 5 A, minimum: 10 V, essential: true}
        failure_cases:
          discharge: {timeline: []}
        requirements:
          - {loads: essential, endure: 90 min}

        """;

    private const string Tolerances = "tolerances: {main_battery.health: {uniform: [80 %, 100 %]}}\n";

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private string Write(string extra = "") => _folder.Write("bench.yaml", Bench + extra);

    [Fact]
    public void Size_OneBattery_NeedsNoName()
    {
        var run = ProgramRun.InProcess("size", Write(), "--format", "json");

        using var json = JsonDocument.Parse(run.Output);
        Assert.Equal(7.5, json.RootElement.GetProperty("required_capacity_amp_hours").GetDouble(), 0.0075);
        Assert.Empty(run.Error);
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public void Size_AsCsv_ListsEveryTrialWithItsVerdict()
    {
        var lines = ProgramRun.InProcess("size", Write(), "--format", "csv").Output.TrimEnd().Split('\n');
        var trials = lines.Skip(1).Select(line => line.Split(',')).ToArray();

        Assert.Equal("capacity_amp_hours,endurance_minutes,required_minutes,case,lost_first,verdict,chattering", lines[0].TrimEnd('\r'));
        Assert.True(trials.Length >= 5, $"{trials.Length} rows");
        Assert.All(trials, trial => Assert.Equal(double.Parse(trial[0], CultureInfo.InvariantCulture) >= 7.5 ? "pass" : "fail", trial[5]));
        Assert.Contains(trials, trial => trial[5] is "fail");
        Assert.Contains(trials, trial => trial[5] is "pass");
    }

    [Fact]
    public void Size_ScenarioThatFailsAsItStands_Exits1WithTheAnswer()
    {
        var path = _folder.Write("short.yaml", Bench.Replace("90 min", "150 min", StringComparison.Ordinal));
        var run = ProgramRun.InProcess("size", path, "--battery", "main_battery", "--quiet");

        // 150 min at 5 A are 12.5 Ah, and the edge is rounded to the safe side.
        Assert.Matches("smallest capacity +12.5[01] Ah", run.Output);
        Assert.Equal(1, run.ExitCode);
    }

    /// <summary>10 Ah: 10 A until the heater is shed, 5 A after it, for 90 min: at minute 30, 25 min later than written.</summary>
    [Theory]
    [InlineData("delay", "longest_recognition_delay_minutes")]
    [InlineData("shed_time", "longest_shed_delay_minutes")]
    public void Size_LatestStep_WrittenBackByHandThroughRunGivesTheRequirement(string find, string key)
    {
        string File(double shedAt) => _folder.Write("shed.yaml", Bench
            .Replace("loads:\n", "loads:\n  heater: {bus: main_bus, current: 5 A}\n", StringComparison.Ordinal)
            .Replace("timeline: []", FormattableString.Invariant($"timeline: [{{at: {shedAt} min, shed: [heater]}}]"), StringComparison.Ordinal));

        using var answer = JsonDocument.Parse(ProgramRun.InProcess("size", File(5), "--find", find, "--format", "json").Output);
        var delay = answer.RootElement.GetProperty(key).GetDouble();
        var run = ProgramRun.InProcess("run", File(Math.Round(5 + delay, 4)), "--format", "json");

        Assert.Equal(25, delay, 0.01);
        using var json = JsonDocument.Parse(run.Output);
        Assert.Equal(90, json.RootElement.GetProperty("cases")[0].GetProperty("endurance_minutes").GetDouble(), 90 * 0.001);
        Assert.Equal(1, ProgramRun.InProcess("run", File(5 + delay + 0.1)).ExitCode);
    }

    [Theory]
    [InlineData("--battery: there is no battery 'main_batery'. Did you mean 'main_battery'? The batteries are: main_battery.", "size", "--battery", "main_batery")]
    [InlineData("--find load needs --bus. The buses are: main_bus.", "size", "--find", "load")]
    [InlineData("--bus: there is no bus 'mainbus'. Did you mean 'main_bus'? The buses are: main_bus.", "size", "--find", "load", "--bus", "mainbus")]
    [InlineData("--find: 'capacty' is not known; expected capacity, load, delay, shed_time or health. Did you mean 'capacity'?", "size", "--find", "capacty")]
    [InlineData("--find shed_time: no failure case has a step after zero that sheds anything.", "size", "--find", "shed_time")]
    [InlineData("--bus goes with --find load only.", "size", "--bus", "main_bus")]
    [InlineData("--offers: the scenario has no batteries_on_offer; write them as in", "size", "--offers")]
    [InlineData("--case: there is no failure case 'dicharge'. Did you mean 'discharge'? The cases are: on its own, discharge.", "failures", "--case", "dicharge")]
    [InlineData("--samples: '1' is not a whole number from 2 to 1000000.", "spread", "--samples", "1")]
    [InlineData("--seed: '1.5' is not a whole number from 0 to 1000000000.", "spread", "--seed", "1.5")]
    [InlineData("--steps: '1' is not a whole number from 2 to 10000.", "sweep", "--vary", "main_battery.health", "--from", "100 %", "--to", "60 %", "--steps", "1")]
    [InlineData("--vary: there is no quantity 'display.curent'. Did you mean 'display.current'? Of display there are: display.current, display.draw, display.duty, display.minimum.", "sweep", "--vary", "display.curent", "--from", "1 A", "--to", "2 A")]
    [InlineData("--from: `1 V` is a voltage, not a current; expected a current in uA, mA or A, such as 2 A.", "sweep", "--vary", "display.current", "--from", "1 V", "--to", "2 A")]
    [InlineData("--from and --to are the same value; a sweep needs two.", "sweep", "--vary", "display.current", "--from", "1 A", "--to", "1000 mA")]
    public void Option_Wrong_Exits2AndSaysWhatIsExpected(string message, string command, params string[] options)
    {
        var run = ProgramRun.InProcess([command, Write(), .. options]);

        Assert.Equal($"endurance: {message}", run.Error.Split('\n')[0]);
        Assert.Empty(run.Output);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void Size_NothingRequired_Exits2()
    {
        var run = ProgramRun.InProcess("size", _folder.Write("free.yaml", Bench.Split("requirements:")[0]));

        Assert.Contains("asks for nothing; write under requirements", run.Error, StringComparison.Ordinal);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void Failures_ThatLoseARequirement_Exit1WithTheRows()
    {
        var run = ProgramRun.InProcess("failures", Write(), "--format", "json");

        using var json = JsonDocument.Parse(run.Output);
        var flat = Assert.Single(json.RootElement.GetProperty("rows").EnumerateArray(), row =>
            row.GetProperty("mode").GetString() == "flat" && row.GetProperty("case").GetString() == "discharge");
        Assert.Equal(0, flat.GetProperty("endurance_minutes").GetDouble());
        Assert.Equal(1, run.ExitCode);
    }

    [Fact]
    public void Spread_WithoutTolerances_Exits2AndShowsHowToWriteThem()
    {
        var run = ProgramRun.InProcess("spread", Write());

        Assert.Contains("bench.yaml has no tolerances", run.Error, StringComparison.Ordinal);
        Assert.Equal(2, run.ExitCode);
        var shown = run.Error[run.Error.IndexOf("tolerances:\n", StringComparison.Ordinal)..];
        Assert.Equal(0, ProgramRun.InProcess("check", Write(shown)).ExitCode);
    }

    [Fact]
    public void Spread_SameSeed_IsTheSameTextAndAnotherSeedIsNot()
    {
        var path = Write(Tolerances);

        var first = ProgramRun.InProcess("spread", path, "--samples", "40", "--seed", "3", "--sensitivity");
        Assert.Equal(first.Output, ProgramRun.InProcess("spread", path, "--samples", "40", "--seed", "3", "--sensitivity").Output);
        Assert.NotEqual(first.Output, ProgramRun.InProcess("spread", path, "--samples", "40", "--seed", "4", "--sensitivity").Output);
        Assert.Empty(first.Error);
        Assert.Equal(0, first.ExitCode);
    }

    [Fact]
    public void Spread_OnOneProcessor_WritesTheSameBytes()
    {
        var path = Write(Tolerances);
        string[] arguments = ["spread", path, "--samples", "200", "--format", "json"];
        var one = new Dictionary<string, string>(StringComparer.Ordinal) { ["DOTNET_PROCESSOR_COUNT"] = "1" };

        Assert.Equal(ProgramRun.InProcess(arguments).Output, ProgramRun.AsProcess(one, arguments).Output);
    }

    /// <summary>90 min need 75 % of 10 Ah.</summary>
    [Fact]
    public void Sweep_BelowTheLimit_Exits1AndSaysWhere()
    {
        var run = ProgramRun.InProcess("sweep", Write(), "--vary", "main_battery.health", "--from", "100 %", "--to", "60 %", "--steps", "3", "--format", "csv");

        Assert.Equal(
            [
                "quantity,unit,value,case,endurance_minutes,lost_first,verdict,chattering",
                "main_battery.health,%,100,discharge,120,display,pass,",
                "main_battery.health,%,80,discharge,96,display,pass,",
                "main_battery.health,%,60,discharge,72,display,fail,",
            ],
            run.Output.TrimEnd().Split("\r\n"));
        Assert.Equal(1, run.ExitCode);
    }

    [Theory]
    [InlineData("size-capacity-main_battery.png", "size")]
    [InlineData("failures-discharge.png", "failures")]
    [InlineData("sensitivity-discharge.png", "spread", "--samples", "20", "--sensitivity")]
    [InlineData("sweep-display-current.png", "sweep", "--vary", "display.current", "--from", "4 A", "--to", "5 A")]
    public void Out_AFolder_HoldsThePlotAndTheResult(string plot, string command, params string[] options)
    {
        var run = ProgramRun.InProcess([command, Write(Tolerances), "--out", _folder["out"], .. options]);

        Assert.True(File.Exists(Path.Combine(_folder["out"], plot)), run.Error);
        Assert.Equal(
            ProgramRun.InProcess([command, Write(Tolerances), "--format", "json", .. options]).Output,
            File.ReadAllText(Path.Combine(_folder["out"], "result.json")));
    }

    [Theory]
    [InlineData("size")]
    [InlineData("failures")]
    [InlineData("spread")]
    [InlineData("sweep", "--vary", "display.current", "--from", "4 A", "--to", "5 A")]
    public void Interrupted_Study_Exits130(string command, params string[] options)
    {
        using var interruption = new CancellationTokenSource();
        interruption.Cancel();

        var run = ProgramRun.InProcess(interruption.Token, [command, Write(Tolerances), .. options]);

        Assert.Equal(130, run.ExitCode);
        Assert.Empty(run.Output);
    }
}
