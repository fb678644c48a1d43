using Endurance.Cli.Commands;
using Endurance.Cli.Watching;

namespace Endurance.Cli.Tests.Watching;

public sealed class WatchStateTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void State_BeforeTheFirstRun_HasNoReport()
    {
        var state = WatchState.Before("bench.yaml");

        Assert.Contains("The first run is under way.", state.Page, StringComparison.Ordinal);
        Assert.Null(state.GoodPage);
    }

    [Fact]
    public void Fault_AfterAGoodRun_IsShownAsTextWithTheReportStillThere()
    {
        var good = Answered();

        var state = good.Refused("v2", "bench.yaml", "line 3: <b>&\"wrong\"</b>\u001b[31m\n");

        Assert.Contains("line 3: &lt;b&gt;&amp;&quot;wrong&quot;&lt;/b&gt;U+001B[31m", state.Page, StringComparison.Ordinal);
        Assert.Contains("href=\"/last-good\"", state.Page, StringComparison.Ordinal);
        Assert.Contains("data-version=\"v2\"", state.Page, StringComparison.Ordinal);
        Assert.Contains("this page is of its last good version", state.GoodPage, StringComparison.Ordinal);
        Assert.Contains("data-version=\"v2\"", state.GoodPage, StringComparison.Ordinal);
        Assert.Contains("Endurance by failure case", state.GoodPage, StringComparison.Ordinal);
    }

    [Fact]
    public void Fault_AfterAFault_KeepsTheReportOfBefore() =>
        Assert.NotNull(Answered().Refused("v2", "bench.yaml", "one\n").Refused("v3", "bench.yaml", "two\n").GoodPage);

    [Fact]
    public void Fault_WithoutAnyGoodRun_LeadsNowhere()
    {
        var state = WatchState.Before("bench.yaml").Refused("v1", "bench.yaml", "wrong\n");

        Assert.Null(state.GoodPage);
        Assert.DoesNotContain("last-good", state.Page, StringComparison.Ordinal);
    }

    [Fact]
    public void Page_OfAReportBeingWatched_MayAskItsServerAndTheReportItselfMayNot()
    {
        Assert.Contains("connect-src &#39;self&#39;", Answered().Page, StringComparison.Ordinal);

        Assert.Equal(0, ProgramRun.InProcess("report", _folder["bench.yaml"], "--out", _folder["report.html"]).ExitCode);
        var report = File.ReadAllText(_folder["report.html"]);
        Assert.DoesNotContain("connect-src", report, StringComparison.Ordinal);
        Assert.DoesNotContain("fetch(", report, StringComparison.Ordinal);
    }

    private WatchState Answered()
    {
        var path = _folder.Write("bench.yaml", Scenarios.Passing);
        return WatchState.Answered("v1", ReportFacts.Of(ReportSource.Read(path, File.ReadAllBytes(path), []), day: null, CancellationToken.None), "bench.yaml:1: warning: \u001b[1mbold\n");
    }
}
