using System.Text.Json;

namespace Endurance.Cli.Tests;

public sealed class WiringCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    // Table 11-9: 2.02 ohm per 1000 ft x 7 ft x 15 A = 0.2121 V; 19 A at 150 degC.
    [Fact]
    public void Json_OfAFeed_HasTheAgreedKeysAndNumbers()
    {
        var run = ProgramRun.InProcess("wiring", Scenario(length: "7 ft"), "--format", "json");

        Assert.Equal(
            """
            {
              "rows": [
                {
                  "part": "panel_feed",
                  "gauge": "12 AWG",
                  "amps": 15,
                  "drop_volts": 0.2121,
                  "limit_volts": 0.5,
                  "rating_amps": 19,
                  "protection_amps": 20,
                  "verdict": "pass",
                  "findings": []
                }
              ]
            }

            """,
            run.Output);
        Assert.Empty(run.Error);
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public void WireTooLong_Judged_ExitsOneWithAFinding()
    {
        var run = ProgramRun.InProcess("wiring", Scenario(length: "20 ft"), "--format", "json");

        using var answer = JsonDocument.Parse(run.Output);
        var row = answer.RootElement.GetProperty("rows")[0];
        Assert.Equal("fail", row.GetProperty("verdict").GetString());
        Assert.Equal("drop-too-high", row.GetProperty("findings")[0].GetProperty("code").GetString());
        Assert.Equal(1, run.ExitCode);
    }

    // T2 = 20 + 85 sqrt(15/13) = 111.30 degC; table 11-9 rates No. 12 at 13 A and No. 10 at 17 A with 105 degC insulation.
    [Fact]
    public void Insulation_OfTheCommandLine_ChangesTheRating()
    {
        var run = ProgramRun.InProcess("wiring", Scenario(length: "7 ft"), "--format", "csv", "--insulation", "105");

        Assert.Equal(
            "panel_feed,12 AWG,7,15,15,15,simulated,0.2121,0.5,16.5017,111.3046,13,20,30,,,10 AWG,check,tables-disagree",
            run.Output.Split("\r\n")[1]);
    }

    [Theory]
    [InlineData("table", "Voltage drop")]
    [InlineData("markdown", "| panel_feed | 12 AWG | 7.0 | 15.00 | steady | 0.21 | 0.50 | 16.5 | 12 AWG | PASS |")]
    public void Report_ForPeople_NamesPartAndTables(string format, string expected)
    {
        var run = ProgramRun.InProcess("wiring", Scenario(length: "7 ft"), "--format", format);

        Assert.Contains(expected, run.Output, StringComparison.Ordinal);
        Assert.Contains("150 degC insulation", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--load-type: there is no feed or load 'panel_fed'. Did you mean 'panel_feed'?", "--load-type", "panel_fed=motor")]
    [InlineData("--load-type: 'panel_feed=moter' is not understood; expected a name, = and lamp, inductive, resistive or motor, as in pitot_heat=resistive.", "--load-type", "panel_feed=moter")]
    [InlineData("--insulation: '120' is not known; expected 105, 150 or 200. Did you mean '150'?", "--insulation", "120")]
    [InlineData("--bundle: 'freeair' is not known; expected in_bundle or free_air. Did you mean 'free_air'?", "--bundle", "freeair")]
    public void Options_Wrong_AreNamed(string message, params string[] options)
    {
        var run = ProgramRun.InProcess(["wiring", Scenario(length: "7 ft"), .. options]);

        Assert.Equal($"endurance: {message}", run.Error.Split('\n')[0]);
        Assert.Equal(2, run.ExitCode);
    }

    private string Scenario(string length) => _folder.Write("bench.yaml",
        $$"""
        endurance: 1
        title: Bench
        system: 14 V
        ambient: 20 degC
        horizon: 30 min
        batteries:
          ship_battery: {bus: main_bus, capacity: 30 Ah, rate: 20 h, peukert: 1, resistance: 9 mohm, emf: [[0 %, 12.0 V], [100 %, 12.8 V]]}
        buses:
          main_bus: {}
          panel_bus: {}
        feeds:
          panel_feed: {from: main_bus, to: panel_bus, wire: {gauge: 12 AWG, length: {{length}}}, breaker: 20 A}
        loads:
          panel: {bus: panel_bus, current: 15 A}
        failure_cases:
          plain_discharge:
            timeline: []

        """);
}
