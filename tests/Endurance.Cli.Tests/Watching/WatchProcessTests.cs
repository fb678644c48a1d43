using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace Endurance.Cli.Tests.Watching;

/// <summary>The watch as a user starts it, read over loopback; every wait is the server's own.</summary>
public sealed class WatchProcessTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly HttpClient _http = new() { Timeout = TimeSpan.FromMinutes(2) };

    public void Dispose()
    {
        _http.Dispose();
        _folder.Dispose();
    }

    [InterruptFact]
    public async Task Watch_OfAFileThatIsSaved_ShowsEachStateAndEndsWell()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);
        using var process = ProgramRun.Start(new Dictionary<string, string>(StringComparer.Ordinal), "watch", file);
        var line = (await process.StandardOutput.ReadLineAsync())!;
        Assert.EndsWith($" shows {file}; Ctrl-C ends the watch", line, StringComparison.Ordinal);
        _http.BaseAddress = new Uri(line.Split(' ')[0]);
        Assert.Equal("127.0.0.1", _http.BaseAddress.Host);

        var version = await OtherThanAsync("starting");
        Assert.Contains("<h2>Answer</h2>", await PageAsync(""), StringComparison.Ordinal);

        // Written beside and renamed, as many editors save.
        File.Move(_folder.Write("new.yaml", Scenarios.Wrong), file, overwrite: true);
        version = await OtherThanAsync(version);
        Assert.Contains("main_buss", await PageAsync(""), StringComparison.Ordinal);
        Assert.Contains("<h2>Answer</h2>", await PageAsync("last-good"), StringComparison.Ordinal);

        File.Delete(file);
        version = await OtherThanAsync(version);
        Assert.Contains("there is no such file", await PageAsync(""), StringComparison.Ordinal);

        File.WriteAllText(file, Scenarios.Failing);
        await OtherThanAsync(version);
        Assert.Contains("NOT met", await PageAsync(""), StringComparison.Ordinal);

        using (var kill = Process.Start("kill", ["-INT", process.Id.ToString(CultureInfo.InvariantCulture)]))
            await kill.WaitForExitAsync();
        await process.WaitForExitAsync();
        Assert.Equal(0, process.ExitCode);
        Assert.EndsWith("watch ended\n", await process.StandardError.ReadToEndAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public void Port_InUse_Exits2WithOneLine()
    {
        using var other = new TcpListener(IPAddress.Loopback, 0);
        other.Start();
        var port = ((IPEndPoint)other.LocalEndpoint).Port.ToString(CultureInfo.InvariantCulture);

        var run = ProgramRun.InProcess("watch", _folder.Write("bench.yaml", Scenarios.Passing), "--port", port);

        Assert.Equal($"endurance: --port: {port} is in use; choose another, or leave it out for a free one.\n", run.Error);
        Assert.Empty(run.Output);
        Assert.Equal(2, run.ExitCode);
    }

    [Fact]
    public void File_ThatIsNotThere_Exits2WithOneLine()
    {
        var run = ProgramRun.InProcess("watch", _folder["none.yaml"]);

        Assert.Equal($"endurance: {_folder["none.yaml"]}: there is no such file\n", run.Error);
        Assert.Equal(2, run.ExitCode);
    }

    [Theory]
    [InlineData("65536")]
    [InlineData("-1")]
    [InlineData("http")]
    public void Port_ThatIsNone_Exits2(string port)
    {
        var run = ProgramRun.InProcess("watch", _folder.Write("bench.yaml", Scenarios.Passing), "--port", port);

        Assert.StartsWith($"endurance: --port: '{port}' is not a whole number from 0 to 65535.\n", run.Error, StringComparison.Ordinal);
        Assert.Equal(2, run.ExitCode);
    }

    /// <summary>Asks until the version is another one; the server holds each question back for a while.</summary>
    private async Task<string> OtherThanAsync(string shown)
    {
        string version;
        do
            version = (await _http.GetStringAsync(new Uri($"version?shown={shown}", UriKind.Relative))).Trim();
        while (version == shown);
        return version;
    }

    private Task<string> PageAsync(string path) => _http.GetStringAsync(new Uri(path, UriKind.Relative));
}
