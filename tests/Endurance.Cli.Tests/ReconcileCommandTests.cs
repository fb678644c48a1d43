using System.Text.Json;

namespace Endurance.Cli.Tests;

public sealed class ReconcileCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    /// <summary>From the card to the overlay, and every command that takes it gives the minutes that were promised.</summary>
    [Fact]
    public void Overlay_LaidOverTheScenario_GivesTheMinutesAfter()
    {
        var file = Floatplane();
        var card = Filled(file, ("load com_receive", "0,95 A"), ("load primary_display", "3.61"), ("load pitot_heat", "8300 mA"));

        var run = ProgramRun.InProcess("reconcile", file, card, "--date", "2026-05-02", "--out", _folder["measured"], "--format", "json");

        Assert.Equal($"wrote 3 files to {_folder["measured"]}\n", run.Error);
        Assert.Equal([".endurance-files", "measured.yaml", "reconcile.json", "reconcile.md"], TemporaryFolder.Names(_folder["measured"]));
        Assert.Equal(File.ReadAllText(Path.Combine(_folder["measured"], "reconcile.json")), run.Output);
        var overlay = Path.Combine(_folder["measured"], "measured.yaml");
        Assert.Contains("  com_receive: {current: 0.95 A, basis: measured, measured_on: 2026-05-02}\n", File.ReadAllText(overlay), StringComparison.Ordinal);
        Assert.Equal(Minutes(run.Output, "endurance_minutes"), Minutes(ProgramRun.InProcess("run", file, "--overlay", overlay, "--format", "json").Output, "endurance_minutes"));
        Assert.Equal(Minutes(run.Output, "endurance_minutes_before"), Minutes(ProgramRun.InProcess("run", file, "--format", "json").Output, "endurance_minutes"));
        Assert.NotEqual(Minutes(run.Output, "endurance_minutes"), Minutes(run.Output, "endurance_minutes_before"));
        Assert.Contains("measured 2026-05-02", ProgramRun.InProcess("loads", file, "--overlay", overlay).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2", 0)]
    [InlineData("60", 1)]
    public void Card_Reconciled_ExitsByTheVerdictAfter(string amperes, int exitCode)
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing.Replace("horizon: 30 min", "horizon: 1 h", StringComparison.Ordinal));

        var run = ProgramRun.InProcess("reconcile", file, _folder.Write("card.csv", $"point,quantity,measured\nT2,load display,{amperes}\n"));

        Assert.Equal(exitCode, run.ExitCode);
        Assert.Empty(run.Error);
        Assert.False(Directory.Exists(_folder["out"]));
    }

    [Fact]
    public void Card_Faulty_Exits2AndWritesNothing()
    {
        var file = Floatplane();
        var card = _folder.Write("card.csv", "point,quantity,measured\nT14,load com_recieve,0.6\nT15,load com_transmit,six\n");

        var run = ProgramRun.InProcess("reconcile", file, card, "--date", "2026-05-02", "--out", _folder["out"]);

        Assert.Contains($"{card}:2:5: error[unknown-reading]: T14 has no reading `load com_recieve`\n", run.Error, StringComparison.Ordinal);
        Assert.Contains($"{card}:3:23: error[not-a-number]: `six` is not a current\n", run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Output);
        Assert.False(Directory.Exists(_folder["out"]));
        Assert.Equal(2, run.ExitCode);
    }

    [Theory]
    [InlineData("--date: '2.5.2026' is not a day such as 2026-05-02.\nTry 'endurance reconcile --help'.\n", "--date", "2.5.2026")]
    [InlineData("--date: the card does not say when display was measured; give the day, such as --date 2026-05-02.\n", "--out", "out")]
    public void Date_MissingOrWrong_Exits2(string message, string option, string value)
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);
        var card = _folder.Write("card.csv", "point,quantity,measured\nT2,load display,2.1\n");

        var run = ProgramRun.InProcess("reconcile", file, card, option, option == "--out" ? _folder[value] : value);

        Assert.Equal("endurance: " + message, run.Error);
        Assert.False(Directory.Exists(_folder["out"]));
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void Date_OfARow_GoesBeforeThatOfTheCommandLine()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);
        var card = _folder.Write("card.csv", "point,quantity,measured,date\nT2,load display,2.1,2026-04-30\n");

        ProgramRun.InProcess("reconcile", file, card, "--date", "2026-05-02", "--out", _folder["out"]);

        Assert.EndsWith("loads:\n  display: {current: 2.1 A, basis: measured, measured_on: 2026-04-30}\n", File.ReadAllText(Path.Combine(_folder["out"], "measured.yaml")), StringComparison.Ordinal);
    }

    /// <summary>The next command into a folder deletes what the one before wrote there.</summary>
    [Fact]
    public void Folder_OfTheCard_IsRefused()
    {
        var file = Floatplane();
        ProgramRun.InProcess("testcard", file, "--out", _folder["card"]);
        var card = Path.Combine(_folder["card"], "testcard.csv");
        File.WriteAllText(card, "point,quantity,measured\nT15,load com_transmit,6\n");

        var run = ProgramRun.InProcess("reconcile", file, card, "--date", "2026-05-02", "--out", _folder["card"]);

        Assert.Equal($"endurance: --out: {_folder["card"]} holds testcard.csv, which is read here; choose another folder.\n", run.Error);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("com_transmit", File.ReadAllText(card), StringComparison.Ordinal);
    }

    [Fact]
    public void Table_OnAScreen_IsAtMostAHundredWide()
    {
        var file = Floatplane();
        using var output = new StringWriter { NewLine = "\n" };

        CommandLine.Run(["reconcile", file, Filled(file, ("load com_receive", "0.95"), ("feed master", "1"))], output, TextWriter.Null, Screen.Plain with { Width = 100 }, CancellationToken.None);

        Assert.All(output.ToString().Split('\n'), line => Assert.True(line.Length <= 100, line));
        Assert.Contains("T14    load com_receive", output.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("In tolerance\n", output.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("run")]
    [InlineData("size", "--battery", "ship_battery")]
    [InlineData("wiring")]
    [InlineData("loads")]
    [InlineData("testcard")]
    [InlineData("battery")]
    [InlineData("compare")]
    [InlineData("failures")]
    [InlineData("report", "--out", "page.html")]
    public void Overlay_Faulty_IsToldByEveryCommand(string command, params string[] options)
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);
        var overlay = _folder.Write("measured.yaml", "loads:\n  display: {current: 2.1}\n");

        var run = ProgramRun.InProcess([command, file, .. options, "--overlay", overlay]);

        Assert.StartsWith($"{overlay}:2:22: error[missing-unit]: `2.1` has no unit\n", run.Error, StringComparison.Ordinal);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void Page_WithAnOverlay_ShowsItsTextAndItsHash()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);
        var overlay = _folder.Write("measured.yaml", "loads: {display: {current: 2.1 A, basis: measured, measured_on: 2026-05-02}}\n");

        ProgramRun.InProcess("report", file, "--overlay", overlay, "--out", _folder["page.html"]);

        var page = File.ReadAllText(_folder["page.html"]);
        Assert.Contains("<dt>Overlay</dt><dd><code>measured.yaml</code></dd>", page.Replace("\n", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains(Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(overlay))), page, StringComparison.Ordinal);
        Assert.Contains("measured_on: 2026-05-02", page, StringComparison.Ordinal);
    }

    private string Floatplane() => _folder.Write("floatplane.yaml", File.ReadAllText(ReportCommandTests.Floatplane));

    /// <summary>The card of a scenario with its predictions as measurements, but for some quantities.</summary>
    private string Filled(string file, params (string Quantity, string Measured)[] others)
    {
        var rows = ProgramRun.InProcess("testcard", file, "--format", "csv").Output.Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        return _folder.Write("testcard.csv", string.Join('\n', rows.Skip(1).Select(Row).Prepend(rows[0])));

        // Counted from the end, since a title may hold commas.
        string Row(string row)
        {
            var cells = row.Split(',');
            cells[^2] = others.Where(other => other.Quantity == cells[^6]).Select(other => $"\"{other.Measured}\"").FirstOrDefault(cells[^4]);
            return string.Join(',', cells);
        }
    }

    private static double?[] Minutes(string json, string key)
    {
        using var answer = JsonDocument.Parse(json);
        return [.. answer.RootElement.GetProperty("cases").EnumerateArray().Select(one => one.GetProperty(key)).Select(value => value.ValueKind == JsonValueKind.Null ? (double?)null : value.GetDouble())];
    }
}
