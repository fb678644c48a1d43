namespace Endurance.Cli.Tests;

public sealed class CheckCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Scenario_Faultless_IsSummedUpOnOutput()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);

        var run = ProgramRun.InProcess("check", file);

        Assert.Equal(
            $"{file}: 1 bus, 1 battery, no alternators, no feeds, 1 load, 2 failure cases, 1 requirement: no errors, no warnings\n",
            run.Output);
        Assert.Empty(run.Error);
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public void Scenario_Doubtful_ExitsZeroWithTheWarningOnError()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Doubtful);

        var run = ProgramRun.InProcess("check", file);

        Assert.EndsWith(": no errors, 1 warning\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("spare_bus", run.Error, StringComparison.Ordinal);
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public void Scenario_Wrong_Exits2WithPlaceAndNearestNameOnError()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Wrong);

        var run = ProgramRun.InProcess("check", file);

        Assert.Contains($"{file}:10:", run.Error, StringComparison.Ordinal);
        Assert.Contains("main_buss", run.Error, StringComparison.Ordinal);
        Assert.EndsWith($"{file}: 1 error, no warnings\n", run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Output);
        Assert.Equal(2, run.ExitCode);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("run")]
    public void Scenario_WithoutFailureCases_Exits2AndSaysWhatToWrite(string command)
    {
        var text = Scenarios.Passing[..Scenarios.Passing.IndexOf("failure_cases:", StringComparison.Ordinal)];
        var file = _folder.Write("bench.yaml", text);

        var run = ProgramRun.InProcess(command, file);

        Assert.EndsWith(
            $"endurance: {file} has no failure cases; write at least one under failure_cases, with an empty timeline for the aircraft as drawn\n",
            run.Error,
            StringComparison.Ordinal);
        Assert.Empty(run.Output);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void Scenario_Missing_Exits2AndNamesTheFile()
    {
        var run = ProgramRun.InProcess("check", _folder["absent.yaml"]);

        Assert.Contains("absent.yaml", run.Error, StringComparison.Ordinal);
        Assert.Equal(2, run.ExitCode);
    }
}
