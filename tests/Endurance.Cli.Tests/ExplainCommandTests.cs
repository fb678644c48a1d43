namespace Endurance.Cli.Tests;

public sealed class ExplainCommandTests
{
    [Fact]
    public void Code_OfAFinding_IsExplained()
    {
        var run = ProgramRun.InProcess("explain", "warning-behind-diode");

        Assert.Equal(
            """
            warning-behind-diode (finding or diagnostic)
              The low-voltage warning senses a bus that another source holds up through its diode. When the alternator fails, the
              light stays dark while the battery runs down. Let it sense the alternator's own bus.

            """,
            run.Output,
            ignoreLineEndingDifferences: true);
        Assert.Empty(run.Error);
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public void Word_OfSeveralMeanings_GetsThemAll()
    {
        var run = ProgramRun.InProcess("explain", "bus");

        Assert.Contains("bus (scenario key)\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("bus (column head)\n", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_OfAColumnHead_NeedNoQuotes()
    {
        var run = ProgramRun.InProcess("explain", "left", "to", "act");

        Assert.StartsWith("left to act (column head)\n", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Word_Mistyped_Exits2WithTheNearest()
    {
        var run = ProgramRun.InProcess("explain", "ideallity");

        Assert.Equal("endurance: there is nothing about 'ideallity' to explain. Did you mean 'ideality'? Without a word, all are listed.\n", run.Error);
        Assert.Empty(run.Output);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void NoWord_ListsAll()
    {
        var run = ProgramRun.InProcess("explain");

        Assert.StartsWith("finding or diagnostic:\n  alias-refused, ", run.Output, StringComparison.Ordinal);
        Assert.Contains("\nscenario key:\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("\ncolumn head:\n", run.Output, StringComparison.Ordinal);
        Assert.All(run.Output.Split('\n'), line => Assert.True(line.Length <= 120, line));
        Assert.Equal(0, run.ExitCode);
    }
}
