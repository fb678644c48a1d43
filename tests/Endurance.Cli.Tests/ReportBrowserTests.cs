using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Endurance.Cli.Commands;
using Endurance.Cli.Watching;
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
    public async Task Text_OfEveryPage_StandsOutFromItsBackground()
    {
        foreach (var scenario in (string[])[ReportCommandTests.Floatplane, ReportCommandTests.Layouts, _folder.Write("hostile.yaml", HostileScenario.Text)])
            Assert.Equal("", await (await OpenAsync(scenario, 1280)).EvaluateAsync<string>(PageProbes.FaintText));
        Assert.Equal("", await (await OpenAsync(ReportCommandTests.Floatplane, 390)).EvaluateAsync<string>(PageProbes.FaintText));
        Assert.Equal("", await (await CardAsync(ReportCommandTests.Floatplane, 1280)).EvaluateAsync<string>(PageProbes.FaintText));

        var good = WatchState.Answered("1", ReportFacts.Of(ReportSource.Read(_folder.Write("bench.yaml", Scenarios.Passing), Encoding.UTF8.GetBytes(Scenarios.Passing), []), day: null, default), "a warning\n");
        var faulty = good.Refused("2", "bench.yaml", "an error\n");
        foreach (var html in (string[])[good.Page, faulty.Page, faulty.GoodPage!])
        {
            var page = await _browser!.NewPageAsync();
            await page.SetContentAsync(html);
            Assert.Equal("", await page.EvaluateAsync<string>(PageProbes.FaintText));
        }
    }

    [BrowserFact]
    public async Task Print_OnEitherPaper_HasEverySection()
    {
        var page = await OpenAsync(ReportCommandTests.Layouts, 1280);
        var sections = await page.Locator("h2").AllTextContentsAsync();
        Assert.Equal(14, sections.Count);
        await AssertPrintsAsync(page, [.. sections]);

        await AssertPrintsAsync(await OpenAsync(_folder.Write("hostile.yaml", HostileScenario.Text), 1280), ["Answer", "The scenario"]);

        var card = await CardAsync(ReportCommandTests.Floatplane, 1280);
        await AssertPrintsAsync(card, ["Objective", "Safety", "Batteries at rest", "Each diode blocks", "Timed run"]);
    }

    [BrowserFact]
    public async Task Card_AtAnyWidth_DoesNotScrollSidewaysAndAsksForNothing()
    {
        foreach (var scenario in (string[])[ReportCommandTests.Floatplane, _folder.Write("hostile.yaml", HostileScenario.Text)])
        {
            foreach (var width in (int[])[1280, 390])
            {
                var card = await CardAsync(scenario, width);
                Assert.True(await card.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width, $"{scenario} at {width} px");
            }
        }

        Assert.Empty(_complaints);
    }

    /// <summary>The outline of a print lists the headings that are on its sheets, as plain text or, beyond ASCII, not at all.</summary>
    private static async Task AssertPrintsAsync(IPage page, string[] headings)
    {
        foreach (var paper in (string[])["A4", "Letter"])
        {
            var print = Encoding.Latin1.GetString(await page.PdfAsync(new() { Format = paper, Outline = true, Tagged = true }));
            Assert.StartsWith("%PDF", print, StringComparison.Ordinal);
            Assert.All(headings, heading => Assert.Contains($"/Title ({heading})", print, StringComparison.Ordinal));
        }

        // What stands over the edge of the paper is lost; 182 mm is A4 without its margins.
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await page.SetViewportSizeAsync(688, 900);
        Assert.InRange(await page.EvaluateAsync<int>("document.documentElement.scrollWidth"), 1, 688);
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

    private async Task<IPage> CardAsync(string scenario, int width)
    {
        Assert.Equal(0, ProgramRun.InProcess("testcard", scenario, "--out", _folder["card"]).ExitCode);
        var own = new Uri(Path.Combine(_folder["card"], "testcard.html")).AbsoluteUri;
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
