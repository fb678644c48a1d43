namespace Endurance.Cli.Tests;

public sealed class TestcardCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Card_WithoutAFolder_IsMarkdownOnOutput()
    {
        var run = ProgramRun.InProcess("testcard", _folder.Write("bench.yaml", Scenarios.Passing));

        Assert.StartsWith("# Ground test: Bench\n\n## Objective\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("**T2. display alone**\n", run.Output, StringComparison.Ordinal);
        Assert.Empty(run.Error);
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public void Folder_AskedFor_HoldsTheCardInEveryForm()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);

        var run = ProgramRun.InProcess("testcard", file, "--out", _folder["card"]);

        Assert.Equal([".endurance-files", "testcard.csv", "testcard.html", "testcard.md"], TemporaryFolder.Names(_folder["card"]));
        Assert.Equal($"wrote 3 files to {_folder["card"]}\n", run.Error);
        Assert.Empty(run.Output);
        Assert.Equal(File.ReadAllText(Path.Combine(_folder["card"], "testcard.csv")), ProgramRun.InProcess("testcard", file, "--format", "csv").Output);
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public void Folder_WithOneFormat_HoldsThatAlone()
    {
        var run = ProgramRun.InProcess("testcard", _folder.Write("bench.yaml", Scenarios.Passing), "--format", "html", "--out", _folder["card"]);

        Assert.Equal([".endurance-files", "testcard.html"], TemporaryFolder.Names(_folder["card"]));
        Assert.Equal($"wrote 1 file to {_folder["card"]}\n", run.Error);
    }

    [Fact]
    public void File_InTheWay_IsNotReplaced()
    {
        Directory.CreateDirectory(_folder["card"]);
        File.WriteAllText(Path.Combine(_folder["card"], "testcard.csv"), "measured");

        var run = ProgramRun.InProcess("testcard", _folder.Write("bench.yaml", Scenarios.Passing), "--out", _folder["card"]);

        Assert.Contains("was not written by this program", run.Error, StringComparison.Ordinal);
        Assert.Equal("measured", File.ReadAllText(Path.Combine(_folder["card"], "testcard.csv")));
        Assert.Equal(2, run.ExitCode);
    }

    [Theory]
    [InlineData(false, 2)]
    [InlineData(true, 0)]
    public void Table_FilledIn_IsReplacedByForceAlone(bool force, int exitCode)
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);
        var table = Path.Combine(_folder["card"], "testcard.csv");
        ProgramRun.InProcess("testcard", file, "--out", _folder["card"]);
        File.WriteAllText(table, File.ReadAllText(table).Replace("12.80,0.20,,", "12.80,0.20,12.77,", StringComparison.Ordinal));

        var run = ProgramRun.InProcess(["testcard", file, "--out", _folder["card"], .. force ? ["--force"] : Array.Empty<string>()]);

        Assert.Equal(exitCode, run.ExitCode);
        Assert.Equal(!force, File.ReadAllText(table).Contains("12.77", StringComparison.Ordinal));
        Assert.Equal(force ? $"wrote 3 files to {_folder["card"]}\n" : $"endurance: {table} has been filled in; choose another folder, or replace it with --force\n", run.Error);
    }

    [Fact]
    public void Scenario_Wrong_Exits2()
    {
        var run = ProgramRun.InProcess("testcard", _folder.Write("wrong.yaml", Scenarios.Wrong));

        Assert.Contains("main_buss", run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Output);
        Assert.Equal(2, run.ExitCode);
    }
}
