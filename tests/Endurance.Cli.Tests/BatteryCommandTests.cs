using System.Text.Json;

namespace Endurance.Cli.Tests;

public sealed class BatteryCommandTests : IDisposable
{
    private const string Two =
        """
        endurance: 1
        title: Two batteries
        system: 14 V
        batteries:
          large: {bus: main_bus, capacity: 16 Ah, rate: 20 h, peukert: 1.2, resistance: 20 mohm, emf: [[0 %, 10.6 V], [100 %, 12.8 V]]}
          small: {bus: main_bus, chemistry: agm, ratings: [[20 h, 7.2 Ah], [1 h, 4.5 Ah]]}
        buses:
          main_bus: {cutoff: 10.5 V}
        loads:
          display: {bus: main_bus, current: 2 A, minimum: 10 V, essential: true}
        failure_cases:
          discharge: {timeline: []}

        """;

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Json_OfTwoCurrents_IsOneObjectWithARowEach()
    {
        var run = ProgramRun.InProcess("battery", _folder.Write("two.yaml", Two), "--battery", "large", "--format", "json", "--amps", "5", "--amps", "0.8");

        using var json = JsonDocument.Parse(run.Output);
        Assert.Equal("large", json.RootElement.GetProperty("battery").GetString());
        var rows = json.RootElement.GetProperty("rows").EnumerateArray().ToList();
        Assert.Equal([0.8, 5], rows.Select(row => row.GetProperty("amps").GetDouble()));

        // H (I_ref/I)^k
        Assert.Equal(1200 * Math.Pow(0.8 / 5, 1.2), rows[1].GetProperty("minutes").GetDouble(), 1e-4);
        Assert.Equal(1200, rows[0].GetProperty("given_minutes").GetDouble());
        Assert.Equal(1200, rows[0].GetProperty("minutes_kinetic").GetDouble(), 1e-3);
        Assert.Empty(run.Error);
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public void Json_OfSeveralBatteries_Exits2AndNamesThem()
    {
        var run = ProgramRun.InProcess("battery", _folder.Write("two.yaml", Two), "--format", "json");

        Assert.Equal("endurance: --format json is about one battery; choose it with --battery. The batteries are: large, small.\n", run.Error);
        Assert.Empty(run.Output);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void Battery_Misspelt_Exits2WithTheNearestName()
    {
        var run = ProgramRun.InProcess("battery", _folder.Write("two.yaml", Two), "--battery", "smal");

        Assert.Equal("endurance: --battery: there is no battery 'smal'. Did you mean 'small'? The batteries are: large, small.\n", run.Error);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void Table_WithoutAName_ShowsEveryBattery()
    {
        var run = ProgramRun.InProcess("battery", _folder.Write("two.yaml", Two), "--to", "11 V");

        Assert.Contains("Battery large\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("Battery small\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("Minutes to 11 V at constant currents, from full.", run.Output, StringComparison.Ordinal);
        Assert.Contains("exponent 1.1861, taken from 0.36 A to 4.5 A", run.Output.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public void Out_AFolder_HoldsAPlotOfEachBattery()
    {
        var run = ProgramRun.InProcess("battery", _folder.Write("two.yaml", Two), "--amps", "5", "--out", _folder["plots"]);

        Assert.Equal(0, run.ExitCode);
        Assert.Equal(
            ["battery-large.png", "battery-large.svg", "battery-small.png", "battery-small.svg"],
            Directory.GetFiles(_folder["plots"]).Select(file => Path.GetFileName(file)).Where(name => name.StartsWith("battery-", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("--amps: `0` is zero; expected a bare number at least 0.001 and at most 10000.", "--amps", "0")]
    [InlineData("--amps: `5 A` is not a bare number; expected a bare number without a unit, such as 5.", "--amps", "5 A")]
    [InlineData("--to: `10.5` has no unit; expected a voltage in mV or V, such as 10.5 V.", "--to", "10.5")]
    [InlineData("--format: 'csv' is not known; expected table, markdown or json.", "--format", "csv")]
    public void Option_Wrong_SaysWhatIsExpected(string message, params string[] options)
    {
        var run = ProgramRun.InProcess(["battery", _folder.Write("two.yaml", Two), .. options]);

        Assert.Equal($"endurance: {message}", run.Error.Split('\n')[0]);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void Parts_AsTableMarkdownAndJson_NameTheSources()
    {
        Assert.Contains("from memory, unverified", ProgramRun.InProcess("parts").Output, StringComparison.Ordinal);
        Assert.StartsWith("# Built-in reference data\n", ProgramRun.InProcess("parts", "--format", "markdown").Output, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(ProgramRun.InProcess("parts", "--format", "json").Output);
        Assert.Equal(5, json.RootElement.EnumerateObject().Count());
    }
}
