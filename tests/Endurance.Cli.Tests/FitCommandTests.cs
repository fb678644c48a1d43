using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Endurance.Cli.Tests;

public sealed class FitCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Log_OfTwoRates_PrintsTheFitAndTheBattery()
    {
        var run = ProgramRun.InProcess("fit", Log(), "--rated", "10 Ah at 10 h", "--to", "11.0 V");

        Assert.StartsWith("Battery fit: bench.csv\n\nFitted to runs 1, 2 of 2;", run.Output, StringComparison.Ordinal);
        Assert.Contains("Minutes to 11 V", run.Output, StringComparison.Ordinal);
        Assert.Contains(" 1    11.000        600.0              100.0  PASS", run.Output, StringComparison.Ordinal);
        Assert.Contains("    peukert: 1\n    resistance: 20 mohm\n    emf:\n      - [0 %, 11.0", run.Output, StringComparison.Ordinal);
        Assert.Empty(run.Error);
        Assert.Equal(0, run.ExitCode);
    }

    /// <summary>The run at 2 A reaches 11.0 V at an EMF of 11.04 V, after 296.4 min: 9.88 Ah, the least of the two.</summary>
    [Theory]
    [InlineData("12.3 Ah at 10 h", 0)]
    [InlineData("12.4 Ah at 10 h", 1)]
    public void CapacityTest_OfTenAmpereHours_PassesFromEightyPercentOfTheRating(string rated, int exitCode) =>
        Assert.Equal(exitCode, ProgramRun.InProcess("fit", Log(), "--rated", rated, "--to", "11.0 V").ExitCode);

    [Fact]
    public void Folder_AskedFor_HoldsTheBatteryAndThePlot()
    {
        var run = ProgramRun.InProcess("fit", Log(), "--out", _folder["out"], "--format", "json");

        Assert.Equal([".endurance-files", "battery.yaml", "fit.json", "fit.png", "fit.svg"], TemporaryFolder.Names(_folder["out"]));
        Assert.Equal($"wrote 4 files to {_folder["out"]}\n", run.Error);
        Assert.Equal(File.ReadAllText(Path.Combine(_folder["out"], "fit.json")), run.Output);
        using var json = JsonDocument.Parse(run.Output);
        Assert.Equal(File.ReadAllText(Path.Combine(_folder["out"], "battery.yaml")), json.RootElement.GetProperty("battery_yaml").GetString());
    }

    [Fact]
    public void Battery_Written_RunsInAScenario()
    {
        var fit = ProgramRun.InProcess("fit", Log(), "--format", "json");
        using var json = JsonDocument.Parse(fit.Output);
        var file = _folder.Write("bench.yaml", "endurance: 1\ntitle: Bench\nsystem: 14 V\nhorizon: 20 h\nbatteries:\n" + json.RootElement.GetProperty("battery_yaml").GetString()
            + "buses: {battery_bus: {}}\nloads: {lamp: {bus: battery_bus, current: 2 A, minimum: 10.5 V, essential: true}}\nfailure_cases: {discharge: {timeline: []}}\n");

        var run = ProgramRun.InProcess("run", file, "--format", "json");

        Assert.Empty(run.Error);
        using var answer = JsonDocument.Parse(run.Output);
        Assert.Equal(300, answer.RootElement.GetProperty("cases")[0].GetProperty("endurance_minutes").GetDouble(), 1.5);
    }

    [Theory]
    [InlineData("--run: 'two' is not the number of a run; expected 1, 2, ...", "--run", "two")]
    [InlineData("--rated: '17 Ah' is not a capacity at an hour rate; expected one such as \"17 Ah at 20 h\".", "--rated", "17 Ah")]
    [InlineData("--rated: `17` has no unit; expected a charge in mAh or Ah, such as 17 Ah.", "--rated", "17 at 20 h")]
    [InlineData("--to: `10,5 V` has a decimal comma; expected a decimal point: 10.5 V.", "--to", "10,5 V")]
    [InlineData("--format: 'csv' is not known; expected table, json or markdown.", "--format", "csv")]
    public void Option_Wrong_Exits2WithOneLine(string message, string option, string value)
    {
        var run = ProgramRun.InProcess("fit", Log(), option, value);

        Assert.Equal($"endurance: {message}\nTry 'endurance fit --help'.\n", run.Error);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void Run_ThatTheLogDoesNotHave_Exits2()
    {
        var file = Log();

        var run = ProgramRun.InProcess("fit", file, "--run", "3");

        Assert.Equal($"endurance: {file}: there is no run 3; the log has runs 1 to 2\n", run.Error);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void Log_Faulty_Exits2WithThePlace()
    {
        var file = _folder.Write("bad.csv", "time_s,volts,amps\n0,x,1\n");

        var run = ProgramRun.InProcess("fit", file);

        Assert.StartsWith($"{file}:2:3: error[not-a-number]: `x` is not a voltage\n", run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Output);
        Assert.Equal(2, run.ExitCode);
    }

    /// <summary>10 Ah at any current, 20 mohm, EMF from 12.7 V straight down to 11.02 V: 1 A for 10 h, 2 A for 5 h, a row a minute, two rows at each switching.</summary>
    private string Log()
    {
        const double ohms = 0.02;
        var text = new StringBuilder("time_s,voltage,current\n");
        double start = 0;
        void Row(double seconds, double charge, double amperes) => text.Append(
            CultureInfo.InvariantCulture, $"{start + seconds:0},{11.02 + (1.68 * charge) - (amperes * ohms):0.00000},{-amperes}\n");
        foreach (var amperes in (ReadOnlySpan<double>)[1, 2])
        {
            var hours = 10 / amperes;
            Row(0, 1, 0);
            Row(50, 1, 0);
            start += 60;
            for (var minute = 0; minute <= hours * 60; minute++)
                Row(minute * 60, 1 - (minute / (hours * 60)), amperes);
            start += hours * 3600;
            Row(5, 0, 0);
            Row(60, 0, 0);
            start += 7200;
        }

        return _folder.Write("bench.csv", text.ToString());
    }
}
