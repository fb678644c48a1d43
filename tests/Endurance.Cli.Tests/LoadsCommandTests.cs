using System.Text.Json;

namespace Endurance.Cli.Tests;

public sealed class LoadsCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    // 26.15 A of 35 A is 74.7 %; with 6.5 A of pitot heat 93.3 %. The limit is 80 %: FAA AC 43.13-1B, paragraph 11-35.
    [Theory]
    [InlineData("off", 74.7143, "pass", 0)]
    [InlineData("on", 93.2857, "fail", 1)]
    public void Json_ShareOfTheAlternator_DecidesTheExitCode(string pitotHeat, double share, string verdict, int exitCode)
    {
        var run = ProgramRun.InProcess("loads", Scenario(pitotHeat), "--format", "json");

        using var answer = JsonDocument.Parse(run.Output);
        var alternator = answer.RootElement.GetProperty("alternators")[0];
        Assert.Equal(share, alternator.GetProperty("share_percent").GetDouble(), 1e-4);
        Assert.Equal(verdict, alternator.GetProperty("verdict").GetString());
        Assert.Equal(exitCode, run.ExitCode);
    }

    [Fact]
    public void Csv_OfALoad_SaysWhereItsNumberCameFrom()
    {
        var run = ProgramRun.InProcess("loads", Scenario("off"), "--format", "csv");

        Assert.Equal(
            ["load,bus,phase,on,kind,amps,duty_percent,mean_amps,peak_amps,basis,measured_on,nominal_volts", "panel,main_bus,,yes,continuous,23.85,100,23.85,23.85,,,14", "strobe,main_bus,,yes,continuous,2.3,100,2.3,7.1,measured,2026-05-02,14"],
            run.Output.Split("\r\n").Take(3).ToArray());
    }

    [Theory]
    [InlineData("table", "Share of the alternator", "measured 2026-05-02")]
    [InlineData("markdown", "| strobe | main_bus | every | on | continuous | 2.30 | 100.0 | 2.30 | 7.10 | measured 2026-05-02 |", "Why they differ in")]
    public void Report_ForPeople_HasTotalsAndReasons(string format, params string[] expected)
    {
        var run = ProgramRun.InProcess("loads", Scenario("off"), "--format", format);

        Assert.All(expected, text => Assert.Contains(text, run.Output, StringComparison.Ordinal));
    }

    private string Scenario(string pitotHeat) => _folder.Write("panel.yaml",
        $$"""
        endurance: 1
        title: Panel
        system: 14 V
        horizon: 30 min
        batteries:
          ship_battery: {bus: main_bus, capacity: 30 Ah, rate: 20 h, peukert: 1.2, resistance: 9 mohm, emf: [[0 %, 12.0 V], [100 %, 12.8 V]]}
        alternators:
          generator: {bus: main_bus, setpoint: 14.2 V, rated: 35 A}
        buses:
          main_bus: {}
        loads:
          panel: {bus: main_bus, current: 23.85 A, essential: true}
          strobe: {bus: main_bus, current: 2.30 A, peak: 7.10 A, basis: measured, measured_on: 2026-05-02}
          pitot_heat: {bus: main_bus, current: 6.5 A, state: {{pitotHeat}}}
        failure_cases:
          alternator_failure:
            timeline:
              - {at: 0 min, fail: [generator]}

        """);
}
