using System.Collections.Immutable;
using System.Text;
using System.Xml.Linq;
using Endurance.Quantities;
using Endurance.Reports.Plots;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;

namespace Endurance.Tests.Reports;

public sealed class PlotTests
{
    [Fact]
    public void Describe_Fixture_MatchesTheWholeExpectedText() => GoldenText.AssertMatches("plots.txt", Text());

    [Fact]
    public void Describe_CommaCulture_IsTheSame() => Assert.Equal(Text(), CommaCulture.Run(Text));

    [Fact]
    public void Describe_CaseThatOutlastsTheHorizon_IsMarkedMoreThanIt()
    {
        var comparison = Plot("all-cases-essential_bus");

        Assert.Equal(["83.2 min", "30.0 min", "> 240 min"], comparison.Panels[0].Markers.Select(marker => marker.Text));
        Assert.True(Plot("essential-loads").Panels[0].Bars[^1].GoesOn);
    }

    [Fact]
    public void Describe_RunThatEndedEarly_FallsToZeroVolts()
    {
        var curve = Plot("case-alternator_failure-buses").Panels[0].Series[0];

        Assert.Equal(new PlotPoint(121.5, 0), curve.Points[^1]);
    }

    [Fact]
    public void Describe_LoadThatMissesItsRequirement_IsMarkedMissedWhileOthersAreMet()
    {
        var kinds = Plot("essential-loads").Panels[0].Bars.Where(bar => bar.Row is >= 5 and <= 7).Select(bar => bar.Kind);

        Assert.Equal([BarKind.Met, BarKind.Met, BarKind.Missed], kinds);
    }

    [Fact]
    public void Describe_LoadShedOrNeverOn_IsNotShownAsLasting()
    {
        var result = ReportFixture.Cases[2];
        var loads = result.Run.Loads
            .SetItem(0, result.Run.Loads[0] with { TimeShed = Duration.FromMinutes(5) })
            .SetItem(1, result.Run.Loads[1] with { WasConnected = false });

        var bars = Plots([result with { Run = result.Run with { Loads = loads } }]).Single(plot => plot.FileStem == "essential-loads").Plot.Panels[0].Bars;

        Assert.Equal(["switched off at 5.0 min", "not on", "> 240 min"], bars.Select(bar => bar.Text));
        Assert.Equal([5.0, 0.0, 240.0], bars.Select(bar => bar.Length));
    }

    [Fact]
    public void Describe_ManyEventsAtOneInstant_ShareOneNumberedMark()
    {
        var result = ReportFixture.Cases[0];
        var events = Enumerable.Range(0, 9).Select(i => new TimedEvent(Duration.FromMinutes(10), EventKind.Step, "x", $"load_{i} shed")).ToImmutableArray();

        var marks = Plots([result with { Run = result.Run with { Events = events } }]).Single(plot => plot.FileStem.EndsWith("-buses", StringComparison.Ordinal)).Plot.Events;

        var mark = Assert.Single(marks);
        Assert.Equal("10.0 min: load_0 shed; load_1 shed; load_2 shed; load_3 shed; load_4 shed; and 4 more", mark.Text);
    }

    [Fact]
    public void Describe_CasesWithoutTrace_StillShowTheBars()
    {
        var bare = ReportFixture.Cases.Select(result => result with { Run = result.Run with { Trace = null } }).ToImmutableArray();

        Assert.Equal(["essential-loads"], Plots(bare).Select(plot => plot.FileStem));
    }

    [Fact]
    public void Describe_EveryKindOfName_GivesSafeAndDistinctFileStems()
    {
        var cases = AwkwardText.All.Select(name => ReportFixture.Cases[2] with { Name = name }).ToImmutableArray();

        var stems = Plots(cases).Select(plot => plot.FileStem).ToArray();

        Assert.Equal(stems.Length, stems.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(stems, stem => Assert.Matches("^[a-z0-9_-]{1,90}$", stem));
    }

    [Fact]
    public void Describe_UnknownBus_IsRefused() =>
        Assert.Throws<ArgumentException>(() => PlotSet.Describe(ReportFixture.Scenario, ReportFixture.Cases, "no_such_bus"));

    [Fact]
    public void Describe_BusGiven_IsTheOneCompared() =>
        Assert.Equal("all-cases-main_bus", PlotSet.Describe(ReportFixture.Scenario, ReportFixture.Cases, "main_bus")[0].FileStem);

    [Fact]
    public void Render_Twice_GivesTheSameBytes()
    {
        var first = Plots(ReportFixture.Cases).Select(plot => (Png: PlotRenderer.Png(plot.Plot), Svg: PlotRenderer.Svg(plot.Plot))).ToArray();
        // Backwards, and under another culture, so that anything counted up or formatted by the process would show.
        var second = CommaCulture.Run(() => Plots(ReportFixture.Cases).Reverse().Select(plot => (Png: PlotRenderer.Png(plot.Plot), Svg: PlotRenderer.Svg(plot.Plot))).Reverse().ToArray());

        Assert.Equal(first.Select(pair => Convert.ToHexString(pair.Png)), second.Select(pair => Convert.ToHexString(pair.Png)));
        Assert.Equal(first.Select(pair => Encoding.UTF8.GetString(pair.Svg)), second.Select(pair => Encoding.UTF8.GetString(pair.Svg)));
    }

    [Fact]
    public void Svg_EveryKindOfName_IsWellFormedAndNeedsNoFont()
    {
        foreach (var name in AwkwardText.All)
        {
            var svg = Encoding.UTF8.GetString(PlotRenderer.Svg(Plot("all-cases-essential_bus") with { Title = name, Notes = [name] }));

            var root = XDocument.Parse(svg).Root!;
            Assert.Equal("svg", root.Name.LocalName);
            Assert.DoesNotContain(root.Descendants(), element => element.Name.LocalName is "text" or "script" or "image");
        }
    }

    [Fact]
    public void Svg_CurvesAndLetters_AreWrittenOnce()
    {
        var root = XDocument.Parse(Encoding.UTF8.GetString(PlotRenderer.Svg(Plot("case-normal-buses")))).Root!;

        var shapes = root.Descendants().Where(element => element.Name.LocalName is "path").Select(element => element.Attribute("d")!.Value).ToList();
        Assert.Equal(shapes.Distinct(), shapes);
        var identifiers = root.Descendants().Attributes("id").Select(attribute => $"#{attribute.Value}").ToHashSet();
        var uses = root.Descendants().Where(element => element.Name.LocalName is "use").Select(use => use.Attributes().Single(attribute => attribute.Name.LocalName is "href").Value).ToList();
        Assert.True(uses.Count > uses.Distinct().Count());
        Assert.Empty(uses.Except(identifiers));
    }

    [Fact]
    public void Png_WithAndWithoutWords_Differs()
    {
        var plot = Plot("essential-loads");

        Assert.NotEqual(PlotRenderer.Png(plot), PlotRenderer.Png(plot with { Title = "" }));
    }

    [Fact]
    public void Png_ManyEvents_GrowsDownwards()
    {
        var plot = Plot("case-normal-buses");
        var busy = plot with { Events = [.. Enumerable.Range(1, 30).Select(i => new PlotEvent(i, i * 8, new string('w', 90)))] };

        Assert.Equal((1200, 700), SizeOf(PlotRenderer.Png(plot)));
        Assert.True(SizeOf(PlotRenderer.Png(busy)).Height > 1500);
    }

    [Theory]
    [InlineData("Alternator Failure", "alternator-failure")]
    [InlineData("../etc/passwd", "etc-passwd")]
    [InlineData("סוללה", "unnamed")]
    [InlineData("a  b", "a-b")]
    public void FileStem_Text_BecomesLowerCaseAndSafe(string text, string expected) => Assert.Equal(expected, FileStem.Of(text));

    [Theory]
    [InlineData("plain text", new[] { "plain text" })]
    [InlineData("a סוללה ראשית b", new[] { "a ", "סוללה ראשית", " b" })]
    [InlineData("סוללה [red]", new[] { "סוללה", " [red]" })]
    public void TextRuns_MixedDirections_AreSplitWhereTheDirectionTurns(string text, string[] expected) => Assert.Equal(expected, TextRuns.Of(text));

    private static ImmutableArray<(string FileStem, PlotDescription Plot)> Plots(ImmutableArray<CaseResult> cases) => PlotSet.Describe(ReportFixture.Scenario, cases);

    private static PlotDescription Plot(string stem) => Plots(ReportFixture.Cases).Single(plot => plot.FileStem == stem).Plot;

    private static string Text() => string.Concat(Plots(ReportFixture.Cases).Select(plot => $"file {plot.FileStem}\n{PlotDescriptionText.Write(plot.Plot)}\n"));

    /// <summary>Width and height from the header chunk of a PNG file.</summary>
    private static (int Width, int Height) SizeOf(byte[] png) =>
        (System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)), System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20)));
}
