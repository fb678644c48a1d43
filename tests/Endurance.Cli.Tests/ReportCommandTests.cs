using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace Endurance.Cli.Tests;

public sealed class ReportCommandTests : IDisposable
{
    private static readonly string[] Sections =
    [
        "Answer", "Feed diagram", "Failure cases and their timelines", "Load analysis", "Sizing margin", "Single failures", "Wiring", "Batteries",
        "What the numbers rest on", "Findings", "What is not covered", "Before you rely on this", "The scenario",
    ];

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Page_OfTheFloatplane_HoldsEverySectionAndStaysSmall()
    {
        var page = Page(Floatplane);

        Assert.Equal(Sections, Matches(page, "<h2>(?<text>[^<]*)</h2>"));
        Assert.True(page.Length < 2_000_000, $"{page.Length} characters");
        Assert.Contains("2026-05-02", page, StringComparison.Ordinal);
        Assert.Contains(">37.2<", page.Replace("+37.2", "37.2", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Page_OfAScenarioWithLayouts_SetsThemSideBySide()
    {
        var page = Page(Layouts);

        Assert.Equal([.. Sections[..3], "Layouts side by side", .. Sections[3..]], Matches(page, "<h2>(?<text>[^<]*)</h2>"));
        Assert.Contains("Essential bus of every layout: alternator_failure", page, StringComparison.Ordinal);
        Assert.Contains("ideal_<wbr>controller</th>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Front_OfTheFloatplane_TellsWhenNoDisplayIsLeft()
    {
        var page = Page(Floatplane);

        Assert.Contains("<th scope=\"col\" class=\"number\">last display lost (min)</th>", page, StringComparison.Ordinal);
        Assert.DoesNotContain("last ignition lost", page, StringComparison.Ordinal);
        Assert.Contains("Last display lost looks at the essential loads with that word in their name: primary_display.", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Margin_OfEachBattery_IsWhatTheSizingFinds()
    {
        var found = ProgramRun.InProcess("size", Floatplane, "--battery", "ship_battery", "--quiet").Output;
        var smallest = double.Parse(Regex.Match(found, @"smallest capacity +(?<ah>[\d.]+) Ah", RegexOptions.None, TimeSpan.FromSeconds(1)).Groups["ah"].Value, CultureInfo.InvariantCulture);

        var row = Regex.Match(
            Page(Floatplane), "smallest capacity of ship_<wbr>battery</th>\n<td[^>]*>18 Ah</td>\n<td[^>]*>(?<limit>[\\d.]+) Ah</td>\n<td[^>]*good[^>]*>(?<spare>[\\d.]+) Ah</td>", RegexOptions.None, TimeSpan.FromSeconds(1));

        Assert.True(row.Success);
        var limit = double.Parse(row.Groups["limit"].Value, CultureInfo.InvariantCulture);
        Assert.InRange(limit, smallest - 0.01, smallest + 0.11);
        Assert.InRange(double.Parse(row.Groups["spare"].Value, CultureInfo.InvariantCulture), 18 - limit - 0.01, 18 - smallest + 0.01);
    }

    [Fact]
    public void Layout_ThatIsWrong_IsToldAndNoPageIsWritten()
    {
        var scenario = _folder.Write("laid.yaml", Scenarios.Passing + "layouts: {other: {loads: {display: {bus: nowhere}}}}\n");

        var run = ProgramRun.InProcess("report", scenario, "--out", _folder["page.html"]);

        Assert.Contains("in the layout `other`", run.Error, StringComparison.Ordinal);
        Assert.Equal(2, run.ExitCode);
        Assert.False(File.Exists(_folder["page.html"]));
    }

    [Fact]
    public void Page_WrittenTwice_IsTheSameToTheByte() => Assert.Equal(Page(Floatplane, "one.html"), Page(Floatplane, "two.html"));

    [Fact]
    public void Page_OfAnyScenario_NamesNoPlaceToFetchFrom()
    {
        var page = Page(Floatplane);

        Assert.DoesNotContain("://", page, StringComparison.Ordinal);
        Assert.Empty(Matches(page, "(?<text> src=| srcset=|@import|<link|<iframe|<img)"));
        Assert.All(Matches(page, " href=\"(?<text>[^\"]*)\""), target => Assert.StartsWith("#", target, StringComparison.Ordinal));
        Assert.All(Matches(page, @"url\((?<text>[^)]*)\)"), target => Assert.StartsWith("#", target, StringComparison.Ordinal));
    }

    [Fact]
    public void Page_OfHostileNames_ShowsThemAsText()
    {
        var page = Page(_folder.Write("hostile.yaml", HostileScenario.Text));

        Assert.DoesNotContain("<script>alert", page, StringComparison.Ordinal);
        Assert.DoesNotContain("</pre><script>", page, StringComparison.Ordinal);
        Assert.Contains("&lt;script&gt;alert(1)&lt;/script&gt; &amp; &quot;quotes&quot;", page, StringComparison.Ordinal);
        Assert.Contains("תצוגה", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Headings_OfThePage_SkipNoLevel()
    {
        var levels = Matches(Page(Floatplane), "<h(?<text>[1-6])>").Select(int.Parse).ToArray();

        Assert.Equal(1, levels[0]);
        Assert.Single(levels, 1);
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1, $"h{pair.Second} after h{pair.First}"));
    }

    [Fact]
    public void Folder_GivenTwice_HoldsThePageOfTheSecondRun()
    {
        var scenario = _folder.Write("bench.yaml", Scenarios.Passing);
        Assert.Equal(0, ProgramRun.InProcess("report", scenario, "--out", _folder["out"], "--date", "2026-05-01").ExitCode);

        var run = ProgramRun.InProcess("report", scenario, "--out", _folder["out"], "--date", "2026-05-02");

        Assert.Equal(0, run.ExitCode);
        Assert.Contains("2026-05-02", File.ReadAllText(Path.Combine(_folder["out"], "report.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void File_ThatExists_IsReplacedOnlyByForce()
    {
        var scenario = _folder.Write("bench.yaml", Scenarios.Failing);
        var page = _folder.Write("mine.html", "mine");

        var refused = ProgramRun.InProcess("report", scenario, "--out", page);
        Assert.Equal(2, refused.ExitCode);
        Assert.Equal("mine", File.ReadAllText(page));

        Assert.Equal(1, ProgramRun.InProcess("report", scenario, "--out", page, "--force").ExitCode);
        Assert.Contains("NOT met", File.ReadAllText(page), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-13-01")]
    [InlineData("today")]
    public void Date_ThatIsNone_IsRefused(string date)
    {
        var run = ProgramRun.InProcess("report", _folder.Write("bench.yaml", Scenarios.Passing), "--out", _folder["a.html"], "--date", date);

        Assert.Equal(2, run.ExitCode);
        Assert.Contains($"'{date}'", run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(_folder["a.html"]));
    }

    internal static string Floatplane => Path.Combine(Root(), "scenarios", "floatplane.yaml");

    internal static string Layouts => Path.Combine(Root(), "scenarios", "layouts.yaml");

    internal static string TwinFeeds => Path.Combine(Root(), "scenarios", "twin_feeds.yaml");

    private string Page(string scenario, string name = "page.html")
    {
        var run = ProgramRun.InProcess("report", scenario, "--out", _folder[name], "--date", "2026-05-02");
        Assert.Equal(0, run.ExitCode);
        return File.ReadAllText(_folder[name]);
    }

    private static string[] Matches(string page, string pattern) =>
        [.. Regex.Matches(page, pattern, RegexOptions.None, TimeSpan.FromSeconds(5)).Select(match => match.Groups["text"].Value)];

    private static string Root([CallerFilePath] string path = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(path)!, "..", ".."));
}
