namespace Endurance.Cli.Tests;

public sealed class NewCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Starter_Written_PassesCheckWithoutAWarning()
    {
        var file = _folder["mine.yaml"];

        var written = ProgramRun.InProcess("new", file);
        var check = ProgramRun.InProcess("check", file);

        Assert.Equal($"wrote {file}\nnext: endurance run {file}\n", written.Output);
        Assert.Equal(0, written.ExitCode);
        Assert.Empty(check.Error);
        Assert.Equal(0, check.ExitCode);
    }

    [Fact]
    public void Starter_Written_Runs()
    {
        var file = _folder["mine.yaml"];
        ProgramRun.InProcess("new", file);

        var run = ProgramRun.InProcess("run", file);

        Assert.NotEmpty(run.Output);
        Assert.Empty(run.Error);
        Assert.InRange(run.ExitCode, 0, 1);
    }

    [Fact]
    public void FileInTheWay_WithoutForce_StaysAndExits2()
    {
        var file = _folder.Write("mine.yaml", "precious");

        var run = ProgramRun.InProcess("new", file);

        Assert.Equal($"endurance: {file} exists already; choose another name, or replace it with --force\n", run.Error);
        Assert.Equal("precious", File.ReadAllText(file));
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void FileInTheWay_WithForce_IsReplaced()
    {
        var file = _folder.Write("mine.yaml", "precious");

        var run = ProgramRun.InProcess("new", file, "--force");

        Assert.StartsWith("#", File.ReadAllText(file), StringComparison.Ordinal);
        Assert.Equal(["mine.yaml"], TemporaryFolder.Names(_folder.Path));
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public void Folder_Missing_Exits2AndNamesIt()
    {
        var run = ProgramRun.InProcess("new", _folder["absent/mine.yaml"]);

        Assert.Equal($"endurance: there is no folder {_folder["absent"]}\n", run.Error);
        Assert.Equal(2, run.ExitCode);
    }
}
