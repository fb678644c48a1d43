using System.Text.Json;
using System.Text.RegularExpressions;
using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Reports;
using Endurance.Reports.Html;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.BatteryCurves;
using Endurance.Studies.FailureCases;
using Endurance.Studies.GroundTest;
using Endurance.Studies.LayoutComparison;
using Endurance.Studies.LoadAnalysis;
using Endurance.Studies.SingleFailures;
using Endurance.Studies.Wiring;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reports;

/// <summary>Whatever a part is called, every form of the answer shows the name as text.</summary>
public sealed partial class HostileNamesTests
{
    private static readonly string[] Formulas = ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "=cmd|' /C calc'!A0"];

    [Fact]
    public void Page_OfAnyNames_HasTheElementsOfPlainNames()
    {
        var plain = Elements(ReviewPage.Write(Facts("plain")));

        foreach (var name in AwkwardText.All)
        {
            var page = ReviewPage.Write(Facts(name));

            Assert.Equal(plain, Elements(page));
            Assert.Contains(HtmlWriter.Escape(VisibleText.Of(name)).Replace("_", "_<wbr>", StringComparison.Ordinal), page, StringComparison.Ordinal);
            Assert.DoesNotContain(page, character => character is '\u001b' or '\u0007' or '\u202E');
        }
    }

    [Fact]
    public void Curves_OfAnyNames_CarryThemInTheirNumbers()
    {
        foreach (var name in AwkwardText.All)
        {
            var first = CurveNumbers().Match(ReviewPage.Write(Facts(name))).Groups["json"].Value;

            using var json = JsonDocument.Parse(first);
            Assert.Equal(VisibleText.Of(name + " case"), json.RootElement.GetProperty("series")[0].GetProperty("name").GetString());
        }
    }

    [Fact]
    public void Card_OfAnyNames_HasTheElementsOfPlainNames()
    {
        var plain = Elements(HtmlPage.Write(TestCardReport.Describe(GroundTestStudy.Plan(Named("plain")))));

        foreach (var name in AwkwardText.All)
        {
            var card = HtmlPage.Write(TestCardReport.Describe(GroundTestStudy.Plan(Named(name))));

            Assert.Equal(plain, Elements(card));
            Assert.DoesNotContain(card, character => character is '\u001b' or '\u0007' or '\u202E');
        }
    }

    [Fact]
    public void Csv_OfNamesThatAreFormulas_HasNoCellThatRuns()
    {
        foreach (var name in Formulas)
        {
            var facts = Facts(name);
            string[] tables =
            [
                FailureCaseCsv.Write(facts.Scenario, facts.Cases),
                TraceCsv.Write(facts.Cases[0].Run.Trace!),
                TestCardCsv.Write(GroundTestStudy.Plan(facts.Scenario)),
                LoadAnalysisCsv.Write(facts.Loads),
                WiringCsv.Write(facts.Wiring),
                FailureCsv.Write(facts.Scenario, facts.SingleFailures),
                LayoutCsv.Write(facts.Layouts),
            ];

            Assert.All(tables, table => Assert.DoesNotMatch(RunningCell(), table));
            Assert.Contains("'" + name, tables[0], StringComparison.Ordinal);
        }
    }

    /// <summary>One battery, one feed with a diode and a switch, one load, each with the name in its own.</summary>
    private static Scenario Named(string name) => Scenario(horizonHours: 1) with
    {
        Title = name,
        Buses = [Bus(name + " near"), Bus(name + " far", 10)],
        Batteries = [Battery(name + " battery", name + " near", 20, 20, 1, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(100))],
        Feeds =
        [
            Feed(name + " feed", name + " near", name + " far", 20, new IdealDiodeController { OnResistance = Resistance.FromMilliohms(4), RegulatedDrop = Voltage.FromVolts(0.02) })
                with { Switch = new Switch { IsClosed = true } },
        ],
        Loads = [Amperes(name + " display", name + " far", 2, 9)],
        FailureCases = [Case(At(1, (ActionVerb.Shed, name + " display"))) with { Name = name + " case" }],
        Requirements = [new Requirement { Loads = [name + " display"], Endure = Duration.FromMinutes(10) }],
    };

    private static ReviewFacts Facts(string name)
    {
        var scenario = Named(name);
        return new ReviewFacts
        {
            Scenario = scenario,
            File = new ReviewFile(name, name + "\n" + name, "hash"),
            Overlays = [new ReviewFile(name + " above", name, "hash")],
            Version = "0.0.0",
            Cases = FailureCaseStudy.Run(scenario, scenario.FailureCases, new SimulationOptions { SampleInterval = Duration.FromMinutes(1) }),
            Loads = LoadAnalysisStudy.Run(scenario),
            Wiring = WiringStudy.Run(scenario, new WiringOptions()),
            SingleFailures = SingleFailureStudy.Run(scenario, new SingleFailureOptions()),
            Batteries = [BatteryCurveStudy.Run(scenario, scenario.Batteries[0], new BatteryCurveOptions())],
            Layouts = LayoutComparisonStudy.Run([new NamedLayout(name, scenario), new NamedLayout(name + " too", scenario)], 1e-8),
        };
    }

    /// <summary>Names of all start tags in order of first use, after making sure that what is left between tags holds no angle bracket.</summary>
    private static string[] Elements(string page)
    {
        var bare = OwnText().Replace(page, "");
        Assert.Equal(-1, Tag().Replace(bare, "").AsSpan().IndexOfAny('<', '>'));
        return [.. Tag().Matches(bare).Select(tag => tag.Groups["element"].Value).Where(element => element is not ("title" or "wbr")).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
    }

    [GeneratedRegex("<style>.*?</style>|(?<=<script[^>]*>).*?(?=</script>)", RegexOptions.Singleline, 5000)]
    private static partial Regex OwnText();

    [GeneratedRegex("</?(?<element>[a-z0-9!A-Z]+)( [a-zA-Z0-9:-]+(=\"[^\"<>]*\")?)*/?>", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Tag();

    [GeneratedRegex("<script type=\"application/json\">(?<json>.*?)</script>", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex CurveNumbers();

    /// <summary>A cell, quoted or not, that begins like a formula and is no number.</summary>
    [GeneratedRegex("(^|,|\\r\\n)\"?(?![-+]?[0-9.]+(,|\\r\\n|$))[-=+@\\t]", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex RunningCell();
}
