using System.Text;

namespace Endurance.Cli.Tests;

/// <summary>Files that no one would write by hand: each is refused with a line that says why, quickly and in little memory.</summary>
public sealed class HostileFileTests : IDisposable
{
    private const string Whole = "endurance: 1\nsystem: 14 V\nbuses:\n  main_bus: {}\n";
    private const string Heading = "time_s,voltage,current\n";

    /// <summary>Bytes that refusing any of these may allocate.</summary>
    private const long MostBytes = 400_000_000;

    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string, string> Texts => new()
    {
        { Whole + Repeated("# comment\n", 1_100_000), "file-too-large" },
        { "buses: " + Repeated("[", 10_000), "nested-too-deep" },
        { "buses: " + Repeated("{a: ", 10_000), "nested-too-deep" },
        { Repeated("- ", 10_000), "nested-too-deep" },
        { string.Concat(Enumerable.Range(0, 1_000).Select(depth => Repeated(" ", depth) + "a:\n")), "nested-too-deep" },
        { Whole + Repeated("system: 14 V\n", 75_000), "duplicate-key" },
        { Whole + string.Concat(Enumerable.Range(0, 70_000).Select(i => $"  bus{i}: {{}}\n")), "too-many-entries" },
        { Whole + "loads: [" + Repeated("a,", 100_000) + "]\n", "too-many-entries" },
        { "a0: &a0 [x, x]\n" + string.Concat(Enumerable.Range(1, 40).Select(i => $"a{i}: &a{i} [*a{i - 1}, *a{i - 1}]\n")), "alias-refused" },
        { "endurance: &whole {inner: *whole}\n", "alias-refused" },
        { Whole + "loads: {<<: *defaults}\n", "alias-refused" },
        { Whole + "title: \"" + Repeated("a\n", 300_000), "yaml-syntax" },
        { "endurance: 1\n" + Repeated("x", 900_000) + ": 1\n", "yaml-syntax" },
        { Whole + "tittle: " + Repeated("x", 900_000) + "\n", "unknown-key" },
        { Whole + "\0\0", "control-character" },
        { Repeated("\0", 900_000), "control-character" },
        { Whole[..40], "wrong-shape" },
        { "", "empty-file" },
    };

    public static TheoryData<string, string> Logs => new()
    {
        { Heading + Repeated("1,2,3\n", 12_000_000), "file-too-large" },
        { Heading + Repeated("a,b,c\n", 500_000), "not-a-time" },
        { Heading + Repeated("\"\n", 300_000), "quotes" },
        { Heading + Repeated("1,", 3_000_000), "cell-count" },
        { Heading + Repeated("\0", 900_000), "cell-count" },
        { string.Join(',', Enumerable.Range(0, 100_000)) + "\n1,2\n", "column-missing" },
        { Heading, "log-too-short" },
        { "", "log-empty" },
    };

    public static TheoryData<string> Encodings => ["utf-16", "utf-16LE", "utf-16BE", "utf-32"];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Texts), DisableDiscoveryEnumeration = true)]
    public void Scenario_Hostile_IsRefusedInLittleMemory(string text, string code) => AssertRefused("check", _folder.Write("hostile.yaml", text), code);

    [Theory]
    [MemberData(nameof(Logs), DisableDiscoveryEnumeration = true)]
    public void Log_Hostile_IsRefusedInLittleMemory(string text, string code) => AssertRefused("fit", _folder.Write("hostile.csv", text), code);

    [Theory]
    [InlineData("check")]
    [InlineData("run")]
    [InlineData("fit")]
    public void File_OfRandomBytes_IsRefusedAsNoText(string command)
    {
        var bytes = new byte[200_000];
        new Random(20_261).NextBytes(bytes);
        File.WriteAllBytes(_folder["hostile"], bytes);

        AssertRefused(command, _folder["hostile"], "not-utf8");
    }

    [Theory]
    [MemberData(nameof(Encodings))]
    public void File_InAnotherEncoding_IsNamedAsSuchWithAndWithoutMark(string name)
    {
        var encoding = Encoding.GetEncoding(name);
        File.WriteAllBytes(_folder["marked.yaml"], [.. encoding.GetPreamble(), .. encoding.GetBytes(Whole)]);
        File.WriteAllBytes(_folder["plain.yaml"], encoding.GetBytes(Whole));

        AssertRefused("check", _folder["marked.yaml"], "not-utf8");
        if (!name.Contains("32", StringComparison.Ordinal))
            AssertRefused("check", _folder["plain.yaml"], "not-utf8");
    }

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void Scenario_WithOtherLineEnds_IsReadAsUsual(string end)
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing.Replace("\n", end, StringComparison.Ordinal));

        Assert.Equal(0, ProgramRun.InProcess("run", file).ExitCode);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("fit")]
    public void Folder_GivenAsAFile_IsRefused(string command) => AssertRefused(command, _folder.Path, "file-unreadable");

    [UnixFact]
    public void Device_WithoutEnd_IsRefusedAsTooLarge()
    {
        AssertRefused("check", "/dev/zero", "file-too-large");
        AssertRefused("fit", "/dev/zero", "file-too-large");
    }

    [UnixFact]
    public void Pipe_ThatNobodyWritesInto_IsRefused()
    {
        var run = ProgramRun.InShell("mkfifo \"$1\" && dotnet \"$0\" check \"$1\"", _folder["pipe"]);

        Assert.StartsWith($"{_folder["pipe"]}: error[file-unreadable]: nothing writes into this pipe", run.Error, StringComparison.Ordinal);
        Assert.Equal(2, run.ExitCode);
    }

    [UnixFact]
    public void Pipe_WithAWriter_IsRead()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);

        var run = ProgramRun.InShell("mkfifo \"$2\" && { cat \"$1\" > \"$2\" & } && dotnet \"$0\" run \"$2\"", file, _folder["pipe"]);

        Assert.Contains("plain_discharge", run.Output, StringComparison.Ordinal);
        Assert.Equal(0, run.ExitCode);
    }

    [UnixFact]
    public void File_WithoutPermission_IsRefused()
    {
        if (OperatingSystem.IsWindows() || string.Equals(Environment.UserName, "root", StringComparison.Ordinal))
            return; // may read everything
        var file = _folder.Write("closed.yaml", Whole);
        File.SetUnixFileMode(file, UnixFileMode.None);

        AssertRefused("check", file, "file-unreadable");
    }

    private static string Repeated(string piece, int count) => new StringBuilder(piece.Length * count).Insert(0, piece, count).ToString();

    private static void AssertRefused(string command, string file, string code)
    {
        var before = GC.GetTotalAllocatedBytes(precise: true);
        var run = ProgramRun.InProcess(command, file);
        var allocated = GC.GetTotalAllocatedBytes(precise: true) - before;

        Assert.Contains($"error[{code}]", run.Error, StringComparison.Ordinal);
        Assert.StartsWith(file, run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
        Assert.InRange(run.Error.Length, 1, 100_000);
        Assert.Empty(run.Output);
        Assert.Equal(2, run.ExitCode);
        Assert.InRange(allocated, 0, MostBytes);
    }
}
