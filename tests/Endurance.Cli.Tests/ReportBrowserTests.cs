using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using Endurance.Quantities;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using Endurance.Yaml;
using Microsoft.Playwright;

namespace Endurance.Cli.Tests;

/// <summary>The page in a real browser, without any network.</summary>
public sealed class ReportBrowserTests : IAsyncLifetime
{
    private readonly TemporaryFolder _folder = new();
    private readonly List<string> _complaints = [];
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public async Task InitializeAsync()
    {
        if (BrowserFactAttribute.Chromium is not { } path)
            return;
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = path,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    public async Task DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        _playwright?.Dispose();
        _folder.Dispose();
    }

    [BrowserFact]
    public async Task Page_WithHostileNames_RunsNothingOfThemAndAsksForNothing()
    {
        var page = await OpenAsync(_folder.Write("hostile.yaml", HostileScenario.Text), 1280);

        Assert.Empty(_complaints);
        Assert.StartsWith("Bench <script>alert(1)</script>", await page.TitleAsync(), StringComparison.Ordinal);
    }

    [BrowserFact]
    public async Task Curve_PointedAt_ReadsTheVoltsOfTheRun()
    {
        var page = await OpenAsync(ReportCommandTests.Floatplane, 1280);
        var chart = page.Locator("#cases figure.reads svg.chart").First;
        await chart.ScrollIntoViewIfNeededAsync();
        var box = (await chart.BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + (box.Width * 0.4f), box.Y + (box.Height / 2));

        var read = await page.Locator("#cases figure.reads .read").First.TextContentAsync();

        var told = Regex.Match(read!, @"^(?<minutes>[\d.]+) min: .*essential_bus (?<volts>[\d.]+) V", RegexOptions.None, TimeSpan.FromSeconds(1));
        Assert.True(told.Success, read);
        var minutes = double.Parse(told.Groups["minutes"].Value, CultureInfo.InvariantCulture);
        Assert.InRange(minutes, 30, 140);
        Assert.Equal(Volts(minutes), double.Parse(told.Groups["volts"].Value, CultureInfo.InvariantCulture), 0.015);
    }

    [BrowserFact]
    public async Task Head_Clicked_SortsItsTableByNumberBothWays()
    {
        var page = await OpenAsync(ReportCommandTests.Floatplane, 1280);
        var table = page.Locator("#answer table").First;
        var head = table.Locator("thead th").Nth(2);

        await head.Locator("button").ClickAsync();
        Assert.Equal("80.8", await table.Locator("tbody tr").First.Locator("td").Nth(1).TextContentAsync());
        Assert.Equal("ascending", await head.GetAttributeAsync("aria-sort"));

        await head.Locator("button").ClickAsync();
        Assert.Equal("189.8", await table.Locator("tbody tr").First.Locator("td").Nth(1).TextContentAsync());
    }

    [BrowserFact]
    public async Task Diagram_AtAnyWidth_HasNoLabelsThatOverlapAndThePageDoesNotScrollSideways()
    {
        foreach (var scenario in (string[])[ReportCommandTests.Floatplane, ReportCommandTests.TwinFeeds, _folder.Write("hostile.yaml", HostileScenario.Text)])
        {
            foreach (var width in (int[])[1280, 390])
            {
                var page = await OpenAsync(scenario, width);

                Assert.Equal("", await page.EvaluateAsync<string>(PageProbes.Overlaps));
                Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width, $"{scenario} at {width} px is {await page.EvaluateAsync<int>("document.documentElement.scrollWidth")} px wide");
                await page.CloseAsync();
            }
        }
    }

    [BrowserFact]
    public async Task Text_OfThePage_StandsOutFromItsBackground()
    {
        var page = await OpenAsync(ReportCommandTests.Floatplane, 1280);

        Assert.Equal("", await page.EvaluateAsync<string>(PageProbes.FaintText));
    }

    [BrowserFact]
    public async Task Print_OnEitherPaper_HasEverySection()
    {
        var page = await OpenAsync(ReportCommandTests.Floatplane, 1280);
        await page.EmulateMediaAsync(new() { Media = Media.Print });

        Assert.Equal(13, await page.Locator("h2:visible").CountAsync());
        foreach (var paper in (string[])["A4", "Letter"])
        {
            var print = await page.PdfAsync(new() { Format = paper });
            Assert.True(print.AsSpan().StartsWith("%PDF"u8) && print.Length > 50_000, $"{paper}: {print.Length} bytes");
        }
    }

    [BrowserFact]
    public async Task Page_BeingWatched_LoadsItselfAgainAfterASave()
    {
        var file = _folder.Write("bench.yaml", Scenarios.Passing);
        using var process = ProgramRun.Start(new Dictionary<string, string>(StringComparer.Ordinal), "watch", file);
        var address = (await process.StandardOutput.ReadLineAsync())!.Split(' ')[0];
        var page = await ShowAsync(address, 1280, address.TrimEnd('/'));
        await page.WaitForSelectorAsync("#answer");

        await File.WriteAllTextAsync(file, Scenarios.Wrong);
        Assert.Contains("main_buss", await page.Locator("pre.fault").TextContentAsync(), StringComparison.Ordinal);
        await File.WriteAllTextAsync(file, Scenarios.Failing);
        Assert.Contains("NOT met", await page.Locator("#answer p").First.TextContentAsync(), StringComparison.Ordinal);
        Assert.Empty(_complaints);

        using (var kill = Process.Start("kill", ["-TERM", process.Id.ToString(CultureInfo.InvariantCulture)]))
            await kill.WaitForExitAsync();
        await process.WaitForExitAsync();
        Assert.Equal(0, process.ExitCode);
    }

    private async Task<IPage> OpenAsync(string scenario, int width)
    {
        var file = _folder["page.html"];
        Assert.Equal(0, ProgramRun.InProcess("report", scenario, "--out", file, "--force").ExitCode);
        var own = new Uri(file).AbsoluteUri;
        return await ShowAsync(own, width, own);
    }

    /// <summary>Every request that does not begin with what the page may ask for is complained of.</summary>
    private async Task<IPage> ShowAsync(string address, int width, string own)
    {
        var page = await _browser!.NewPageAsync(new() { ViewportSize = new() { Width = width, Height = 900 } });
        page.Console += (_, message) => _complaints.Add(message.Text);
        page.PageError += (_, message) => _complaints.Add(message);
        page.Dialog += (_, dialog) => _complaints.Add("dialog " + dialog.Message);
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(own, StringComparison.Ordinal))
                _complaints.Add("request " + request.Url);
        };
        await page.GotoAsync(address);
        return page;
    }

    /// <summary>Of the essential bus in the first case, from a run of its own.</summary>
    private static double Volts(double minutes)
    {
        var scenario = ScenarioReader.ReadFile(ReportCommandTests.Floatplane).Scenario!;
        var run = FailureCaseStudy.Run(scenario, [scenario.FailureCases[0]], new SimulationOptions { SampleInterval = Duration.FromSeconds(1) })[0].Run;
        var volts = run.Trace!.BusVolts.Single(bus => string.Equals(bus.Name, "essential_bus", StringComparison.Ordinal)).Values;
        return volts[run.Trace.Seconds.Index().First(at => at.Item >= minutes * 60).Index];
    }
}
