namespace Endurance.Cli.Tests;

public sealed class CommandLineTests
{
    [Theory]
    [InlineData("there is no command 'rnu'; expected run, compare, size, failures, spread, sweep, wiring, loads, report, watch, check, battery, parts, new, explain, fit, testcard, reconcile, schema, completion. Did you mean 'run'?", "rnu", "x.yaml")]
    [InlineData("'--smaple' is not known here. Did you mean '--sample'?", "run", "x.yaml", "--smaple", "30s")]
    [InlineData("'--quite' is not known here. Did you mean '--quiet'?", "run", "--quite", "x.yaml")]
    [InlineData("'--queit' is not known here. Did you mean '--quiet'?", "compare", "x.yaml", "--queit")]
    [InlineData("'--rate' is not known here. Did you mean '--rated'?", "fit", "--rate", "17 Ah at 20 h", "x.csv")]
    [InlineData("--sample: '0,5' has a comma; the decimal sign is a point, as in 0.5.", "run", "x.yaml", "--sample", "0,5 s")]
    [InlineData("--sample: '30' has no unit; expected s, min or h, as in \"30 s\".", "run", "x.yaml", "--sample", "30")]
    [InlineData("--sample: 'days' is not a unit of time; expected s, min or h.", "run", "x.yaml", "--sample", "30 days")]
    [InlineData("--sample: '0 s' is not above zero.", "run", "x.yaml", "--sample", "0 s")]
    [InlineData("--sample: '-5 s' is not above zero.", "run", "x.yaml", "--sample", "-5 s")]
    [InlineData("--sample: '' is not a number.", "run", "x.yaml", "--sample", "s")]
    [InlineData("--sample: '1e308 h' is too long.", "run", "x.yaml", "--sample", "1e308 h")]
    [InlineData("'s' is one word too many. A quantity stands in quotes or without a space, as in 30s.", "run", "x.yaml", "--sample", "30", "s")]
    [InlineData("'y.yaml' is one word too many.", "run", "x.yaml", "y.yaml")]
    [InlineData("--out: the name is missing before '--quiet'.", "run", "x.yaml", "--out", "--quiet")]
    [InlineData("--case: the name is missing before '--quiet'.", "run", "x.yaml", "--case", "--quiet")]
    [InlineData("--out: the name is missing before '--force'.", "report", "x.yaml", "--out", "--force")]
    [InlineData("--out: the name is missing before '--force'.", "testcard", "x.yaml", "--out", "--force")]
    [InlineData("'--froce' is not known here. Did you mean '--force'?", "new", "--froce")]
    [InlineData("Required argument missing for option: '--out'.", "run", "x.yaml", "--out")]
    [InlineData("Required argument missing for option: '--sample'.", "run", "x.yaml", "--sample")]
    [InlineData("Option '--sample' expects a single argument but 2 were provided.", "run", "x.yaml", "--sample", "1s", "--sample", "2s")]
    [InlineData("--tolerance: '1e-6,5' has a comma; the decimal sign is a point, as in 1e-6.5.", "run", "x.yaml", "--tolerance", "1e-6,5")]
    [InlineData("--tolerance: '1' is outside 1e-12 to 1e-2.", "run", "x.yaml", "--tolerance", "1")]
    [InlineData("--tolerance: 'NaN' is not a number.", "run", "x.yaml", "--tolerance", "NaN")]
    [InlineData("--tolerance: '1e999' is not a number.", "run", "x.yaml", "--tolerance", "1e999")]
    [InlineData("--format: '1' is not known; expected table, json, csv or markdown.", "run", "x.yaml", "--format", "1")]
    [InlineData("--format: 'jsno' is not known; expected table, json, csv or markdown. Did you mean 'json'?", "run", "x.yaml", "--format", "jsno")]
    [InlineData("Required argument 'FILE' missing for command: 'check'.", "check")]
    public void CommandLine_Wrong_SaysWhatIsWrongOnErrorAndExits2(string message, params string[] arguments)
    {
        var run = ProgramRun.InProcess(arguments);

        Assert.Equal($"endurance: {message}", run.Error.Split('\n')[0]);
        Assert.StartsWith("Try 'endurance ", run.Error.Split('\n')[1], StringComparison.Ordinal);
        Assert.Empty(run.Output);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void CommandLine_Empty_ShowsHelpOnErrorAndExits2()
    {
        var run = ProgramRun.InProcess();

        Assert.Equal(ProgramRun.InProcess("--help").Output, run.Error);
        Assert.Empty(run.Output);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void FileNamedLikeAResponseFile_Checked_IsTakenAsAFile()
    {
        var run = ProgramRun.InProcess("check", "@panel.yaml");

        Assert.Contains("@panel.yaml", run.Error, StringComparison.Ordinal);
        Assert.Equal(2, run.ExitCode);
    }

    [Theory]
    [InlineData("help.txt", "--help")]
    [InlineData("help-run.txt", "run", "--help")]
    [InlineData("help-wiring.txt", "wiring", "--help")]
    [InlineData("help-loads.txt", "loads", "--help")]
    [InlineData("help-report.txt", "report", "--help")]
    [InlineData("help-watch.txt", "watch", "--help")]
    [InlineData("help-compare.txt", "compare", "--help")]
    [InlineData("help-check.txt", "check", "--help")]
    [InlineData("help-new.txt", "new", "--help")]
    [InlineData("help-explain.txt", "explain", "--help")]
    [InlineData("help-battery.txt", "battery", "--help")]
    [InlineData("help-parts.txt", "parts", "--help")]
    [InlineData("help-size.txt", "size", "--help")]
    [InlineData("help-failures.txt", "failures", "--help")]
    [InlineData("help-spread.txt", "spread", "--help")]
    [InlineData("help-sweep.txt", "sweep", "--help")]
    [InlineData("help-fit.txt", "fit", "--help")]
    [InlineData("help-testcard.txt", "testcard", "--help")]
    [InlineData("help-reconcile.txt", "reconcile", "--help")]
    [InlineData("help-schema.txt", "schema", "--help")]
    [InlineData("help-completion.txt", "completion", "--help")]
    public void Help_AskedFor_IsTheAgreedText(string golden, params string[] arguments)
    {
        var run = ProgramRun.InProcess(arguments);

        Assert.Equal(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Golden", golden)), run.Output);
        Assert.Empty(run.Error);
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public void Version_AskedFor_IsNameAndThreeNumbers()
    {
        var run = ProgramRun.InProcess("--version");

        Assert.Matches("^endurance [0-9]+\\.[0-9]+\\.[0-9]+\n$", run.Output);
        Assert.Equal(0, run.ExitCode);
    }
}
