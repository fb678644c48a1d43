using System.Collections.Immutable;
using Endurance.Reports.Diagram;
using Endurance.Reports.Plots;

namespace Endurance.Reports.Html;

/// <summary>One page for somebody who checks the design: self-contained, readable without script, fit for print.</summary>
public static class ReviewPage
{
    private const string Rings = "The rings, and the minutes in the key, tell when the bus first falls below its cutoff, or when the run ends where it has none.";

    /// <summary>The one section that a page may lack.</summary>
    private const string Layouts = "layouts";

    private static readonly ImmutableArray<(string Id, string Title, Action<HtmlWriter, ReviewFacts> Write)> Sections =
    [
        ("answer", "Answer", Answer),
        ("diagram", "Feed diagram", Diagram),
        ("cases", "Failure cases and their timelines", Cases),
        (Layouts, "Layouts side by side", LayoutSection),
        ("loads", "Load analysis", (html, facts) => BlockWriter.Write(html, LoadAnalysisReport.Body(facts.Scenario, facts.Loads), 3)),
        ("margins", "Sizing margin", (html, facts) => BlockWriter.Write(html, MarginBlocks.Of(facts), 3)),
        ("failures", "Single failures", (html, facts) => BlockWriter.Write(html, FailureMatrix.Of(facts), 3)),
        ("wiring", "Wiring", (html, facts) => BlockWriter.Write(html, WiringReport.Body(facts.Wiring), 3)),
        ("batteries", "Batteries", Batteries),
        ("assumptions", "What the numbers rest on", (html, facts) => BlockWriter.Write(html, OriginBlocks.Of(facts), 3)),
        ("findings", "Findings", (html, facts) => BlockWriter.Write(html, ReviewFindings.Of(facts), 3)),
        ("not-covered", "What is not covered", (html, _) => BlockWriter.Write(html, [new ReportList("", NotCovered.All)], 3)),
        ("cautions", "Before you rely on this", (html, _) => BlockWriter.Write(html, [new ReportList("", Cautions.All)], 3)),
        ("scenario", "The scenario", ScenarioText),
    ];

    /// <summary>The same facts give the same text, which ends with a line feed.</summary>
    /// <param name="facts">Shown.</param>
    /// <param name="watch">Where a server keeps the page fresh; <see langword="null"/>: the page asks nobody.</param>
    public static string Write(ReviewFacts facts, PageWatch? watch = null)
    {
        var head = new PageHead($"{facts.Scenario.Title}: electrical endurance")
        {
            Scripts = watch is null ? [PageScript.Text] : [PageScript.Text, WatchScript.Text],
            AsksItsServer = watch is not null,
        };
        return PageFrame.Write(head, html =>
        {
            watch?.Write(html);
            Body(html, facts);
        });
    }

    private static void Body(HtmlWriter html, ReviewFacts facts)
    {
        html.Open("header").Element("h1", facts.Scenario.Title);
        Origin(html, facts);
        html.Close("header").Open("nav", ("aria-label", "Sections")).Open("ol");
        var sections = Sections.Where(section => section.Id != Layouts || !facts.Layouts.IsEmpty).ToArray();
        foreach (var section in sections)
            html.Open("li").Element("a", section.Title, ("href", "#" + section.Id)).Close("li");
        html.Close("ol").Close("nav").Open("main");
        foreach (var section in sections)
        {
            html.Open("section", ("id", section.Id)).Element("h2", section.Title);
            section.Write(html, facts);
            html.Close("section");
        }

        html.Close("main");
    }

    private static void Origin(HtmlWriter html, ReviewFacts facts)
    {
        html.Element("p", "How long the essential electrical loads last after each failure, what goes first, and what that answer rests on.");
        html.Open("dl");
        Term(html, "Scenario", facts.File.Name);
        Term(html, "SHA-256", facts.File.Hash);
        foreach (var overlay in facts.Overlays)
        {
            Term(html, "Overlay", overlay.Name);
            Term(html, "SHA-256", overlay.Hash);
        }

        Term(html, "Program", "Endurance " + facts.Version);
        Term(html, "Date", facts.Date is { } date ? CellText.Date(date) : "not given");
        Term(html, "Simulated", $"{CellText.RoundMinutes(facts.Scenario.Horizon)} min after zero, {RoundedNumber.Short(facts.Scenario.NominalVoltage.Volts, 0)} V system");
        html.Close("dl");
    }

    private static void Term(HtmlWriter html, string term, string value) => html.Element("dt", term).Open("dd").Element("code", value).Close("dd");

    private static void Answer(HtmlWriter html, ReviewFacts facts)
    {
        BlockWriter.Write(html, FrontBlocks.Of(facts), 3);
        if (facts.Scenario.EssentialBus is { } bus && CaseComparisonPlot.Describe(facts.Scenario, facts.Cases, bus) is { } plot)
        {
            html.Element("p", "Point at a curve, or select it and use the arrow keys, to read minutes and values.", ("class", "small screen"));
            CurveFigure.Write(html, plot with { Notes = plot.Notes.SetItem(0, Rings) }, 0);
        }
    }

    private static void Diagram(HtmlWriter html, ReviewFacts facts)
    {
        html.Open("figure", ("class", DiagramSvg.IsWide(facts.Scenario) ? "wide" : "upright")).Element("figcaption", "Buses as bars, sources and feeds as lines between them, as drawn at time zero");
        html.Open("div", ("class", "scroll"), ("role", "region"), ("tabindex", "0"), ("aria-label", "Feed diagram"));
        DiagramSvg.Write(html, facts.Scenario);
        html.Close("div").Close("figure");
        html.Element(
            "p",
            "A dot joins a line to a bar; where a line passes a bar without a dot they are not connected. The triangle of a diode points the way it conducts. "
            + "An open blade is an open contact, a cross marks a breaker, a box on the line a fuse, a small box beside a blade the coil of a contactor. "
            + "* essential load, - other load, ! low-voltage warning; a load with two inputs stands at both buses.",
            ("class", "small"));
        BlockWriter.Write(html, FeedBlocks.Of(facts.Scenario), 3);
    }

    private static void Cases(HtmlWriter html, ReviewFacts facts)
    {
        foreach (var (i, result) in facts.Cases.Index())
        {
            html.Element("h3", $"Case {result.Name}");
            if (CaseBusesPlot.Describe(facts.Scenario, result) is { } plot)
                CurveFigure.Write(html, plot, i + 1);
            BlockWriter.Write(html, CaseSection.Detail(facts.Scenario, result), 4);
        }
    }

    private static void LayoutSection(HtmlWriter html, ReviewFacts facts)
    {
        html.Element("p", "The rest of this page is about the aircraft as drawn. Each layout is the same aircraft wired in another way.");
        BlockWriter.Write(html, LayoutReport.Describe(facts.Layouts).Blocks, 3);
        foreach (var (i, one) in facts.Layouts[0].Cases.Index())
        {
            if (LayoutPlot.Describe(facts.Layouts, one.Result.Name) is { } plot)
                CurveFigure.Write(html, plot with { Notes = plot.Notes.SetItem(0, Rings) }, facts.Cases.Length + facts.Batteries.Length + 1 + i);
        }
    }

    private static void Batteries(HtmlWriter html, ReviewFacts facts)
    {
        if (facts.Batteries.IsEmpty)
            html.Element("p", "The scenario has no battery.");
        foreach (var (i, curve) in facts.Batteries.Index())
        {
            BlockWriter.Write(html, [.. BatteryCurveReport.Blocks(facts.Scenario, curve)], 3);
            CurveFigure.Write(html, BatteryCurvePlot.Describe(facts.Scenario.Title, curve), facts.Cases.Length + 1 + i);
        }
    }

    private static void ScenarioText(HtmlWriter html, ReviewFacts facts)
    {
        foreach (var file in facts.Overlays.Prepend(facts.File))
        {
            html.Open("p").Element("code", file.Name).Text(", SHA-256 ").Element("code", file.Hash).Close("p");
            html.Open("pre", ("tabindex", "0")).Lines(file.Text).Close("pre");
        }
    }
}
