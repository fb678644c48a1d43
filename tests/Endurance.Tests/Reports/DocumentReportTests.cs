using Endurance.Quantities;
using Endurance.Reports;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using Spectre.Console;

namespace Endurance.Tests.Reports;

public sealed class DocumentReportTests
{
    [Fact]
    public void Terminal_FixtureAtWidth100_MatchesTheWholeExpectedText()
    {
        var text = Terminal(FailureCaseReport.Describe(ReportFixture.Scenario, ReportFixture.Cases), 100);

        Assert.All(text.Split('\n'), line => Assert.True(line.TrimEnd().Length <= 100, line));
        GoldenText.AssertMatches("terminal.txt", text);
    }

    [Theory]
    [InlineData(80)]
    [InlineData(40)]
    public void Terminal_NarrowWidth_KeepsNamesAndNumbersWhole(int width)
    {
        var text = Terminal(FailureCaseReport.DescribeQuiet(ReportFixture.Scenario, ReportFixture.Cases), width);

        Assert.All(text.Split('\n'), line => Assert.True(line.TrimEnd().Length <= width, line));
        Assert.All(["alternator_failure", "primary_display", "83.2", "79.1", "+53.2", "PASS"], word => Assert.Contains(word, text, StringComparison.Ordinal));
    }

    [Fact]
    public void Markdown_Fixture_MatchesTheWholeExpectedText() =>
        GoldenText.AssertMatches("report.md", MarkdownReport.Write(FailureCaseReport.Describe(ReportFixture.Scenario, ReportFixture.Cases)));

    [Fact]
    public void Summary_EachCase_HasOneRowWithTheDecidingRequirement()
    {
        var table = Summary();

        Assert.Equal(["failure case", "lost first", "lost at (min)", "left to act (min)", "must last (min)", "margin (min)", "verdict"], table.Columns.Select(column => column.Label));
        Assert.Equal(["alternator_failure", "primary_display", "83.2", "79.1", "essential 30", "+53.2", "PASS"], table.Rows[0].Select(cell => cell.Text));
        Assert.Equal(["engine_out", "ignition_two", "30.0", "no step", "essential 30", "short by < 0.1", "FAIL"], table.Rows[1].Select(cell => cell.Text));
        Assert.Equal(["normal", "nothing", "more than 240", "no step", "essential 30", "more than 210", "PASS"], table.Rows[2].Select(cell => cell.Text));
    }

    [Fact]
    public void Summary_AnotherPartDecides_MustLastNamesTheRequirementOfTheMargin()
    {
        var essential = ReportFixture.Cases[0].Requirements[0];
        var bus = essential with
        {
            Requirement = new Requirement { Bus = "essential_bus", Endure = Duration.FromMinutes(10) },
            Endurance = Duration.FromMinutes(70),
            LimitedBy = "essential_bus",
        };
        var result = ReportFixture.Cases[0] with { Endurance = bus.Endurance, LimitedBy = bus.LimitedBy, Requirements = [bus, essential] };

        var row = SummaryTable.Of(ReportFixture.Scenario, [result]).Rows[0];

        Assert.Equal(["essential_bus", "70.0"], row.Skip(1).Take(2).Select(cell => cell.Text));
        Assert.Equal(["essential 30", "+53.2", "PASS"], row.TakeLast(3).Select(cell => cell.Text));
    }

    [Fact]
    public void Events_ThatGoOnAndOn_AreToldThriceAndCounted()
    {
        var events = Enumerable.Range(0, 2000).Select(i => new TimedEvent(Duration.FromMinutes(i / 10.0), EventKind.LoadLost, "radio", "radio lost: below minimum"));
        var result = ReportFixture.Cases[0] with { Run = ReportFixture.Cases[0].Run with { Events = [.. events, new TimedEvent(Duration.FromMinutes(240), EventKind.End, "", "end")] } };

        var table = FailureCaseReport.Describe(ReportFixture.Scenario, [result]).Blocks.OfType<ReportTable>().Single(block => block.Title == "What happens");

        Assert.Equal(
            ["radio lost: below minimum", "radio lost: below minimum", "radio lost: below minimum", "(the same 1997 times more, the last at 199.9 min)", "end"],
            table.Rows.Select(row => row[1].Text));
    }

    [Fact]
    public void Summary_NothingRequired_SaysSo()
    {
        var free = ReportFixture.Cases[0] with { Requirements = [], Verdict = Verdict.None };

        var row = SummaryTable.Of(ReportFixture.Scenario, [free]).Rows[0];

        Assert.Equal(["-", "-", "none asked"], row.TakeLast(3).Select(cell => cell.Text));
    }

    [Fact]
    public void Summary_RecognisedAndNeverLost_SaysMoreThanWhatIsLeftOfTheHorizon()
    {
        var held = ReportFixture.Cases[2];
        held = held with { Run = held.Run with { Recognition = Duration.FromMinutes(15) } };

        Assert.Equal("more than 225", SummaryTable.Of(ReportFixture.Scenario, [held]).Rows[0][3].Text);
    }

    [Fact]
    public void Quiet_Fixture_IsTheFirstTableAlone()
    {
        var quiet = FailureCaseReport.DescribeQuiet(ReportFixture.Scenario, ReportFixture.Cases);

        var table = Assert.IsType<ReportTable>(Assert.Single(quiet.Blocks));
        Assert.Equal(3, table.Rows.Length);
    }

    [Fact]
    public void Feeds_WithoutReverseFlow_HaveNoColumnForIt()
    {
        var calm = ReportFixture.Cases[0];
        calm = calm with { Run = calm.Run with { Feeds = [.. calm.Run.Feeds.Select(feed => feed with { ReverseCharge = Charge.FromAmpereHours(1e-5) })] } };

        Assert.Contains(Table(ReportFixture.Cases[0], "Feeds").Columns, column => column.Heading is "backwards");
        Assert.DoesNotContain(Table(calm, "Feeds").Columns, column => column.Heading is "backwards");
    }

    [Fact]
    public void Assumptions_SharedByCases_AreListedOnce()
    {
        var document = FailureCaseReport.Describe(ReportFixture.Scenario, [ReportFixture.Cases[0], ReportFixture.Cases[0]]);

        var table = document.Blocks.OfType<ReportTable>().Single(block => block.Columns[0].Heading is "part");
        Assert.Equal(["horizon 240 min", "charge at start 100 %", "capacity factor 80 % at 10 degC"], table.Rows.Select(row => row[1].Text));
        Assert.Equal(["scenario", "ship_battery", ""], table.Rows.Select(row => row[0].Text));
    }

    [Fact]
    public void Terminal_EveryKindOfName_IsShownAsText()
    {
        foreach (var name in AwkwardText.All)
        {
            var text = Terminal(Named(name), 1000);

            Assert.Contains(VisibleText.Of(name), text, StringComparison.Ordinal);
            Assert.DoesNotContain('\u001b', text);
            Assert.DoesNotContain('\u202E', text);
        }
    }

    [Fact]
    public void Markdown_EveryKindOfName_CannotFormatOrBreakTheTable()
    {
        foreach (var name in AwkwardText.All)
        {
            var text = MarkdownReport.Write(Named(name));

            Assert.DoesNotContain("<", text, StringComparison.Ordinal);
            var row = Assert.Single(text.Split('\n'), line => line.Contains("| PASS |", StringComparison.Ordinal));
            Assert.Equal(8, row.Replace("\\|", "", StringComparison.Ordinal).Count(c => c is '|'));
        }
    }

    [Theory]
    [InlineData("a_b_c", "a_b_c")]
    [InlineData("_a_", "\\_a\\_")]
    [InlineData("[red]", "\\[red\\]")]
    [InlineData("<b>&", "&lt;b&gt;&amp;")]
    [InlineData("a|b*c", "a\\|b\\*c")]
    [InlineData("x\ny", "x y")]
    public void MarkdownText_Escape_ShowsTheTextAsTyped(string text, string expected) => Assert.Equal(expected, MarkdownText.Escape(text));

    [Fact]
    public void Reports_CommaCulture_AreTheSame()
    {
        var document = FailureCaseReport.Describe(ReportFixture.Scenario, ReportFixture.Cases);
        var expected = MarkdownReport.Write(document) + Terminal(document, 100);

        var actual = CommaCulture.Run(() =>
        {
            var again = FailureCaseReport.Describe(ReportFixture.Scenario, ReportFixture.Cases);
            return MarkdownReport.Write(again) + Terminal(again, 100);
        });

        Assert.Equal(expected, actual);
    }

    private static ReportTable Summary() => SummaryTable.Of(ReportFixture.Scenario, ReportFixture.Cases);

    private static ReportTable Table(CaseResult result, string title) =>
        FailureCaseReport.Describe(ReportFixture.Scenario, [result]).Blocks.OfType<ReportTable>().Single(table => table.Title == title);

    private static ReportDocument Named(string name) =>
        FailureCaseReport.DescribeQuiet(ReportFixture.Scenario with { Title = name }, [ReportFixture.Cases[0] with { Name = name, LimitedBy = name }]);

    private static string Terminal(ReportDocument document, int width)
    {
        using var writer = new StringWriter();
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.No, ColorSystem = ColorSystemSupport.NoColors, Out = new AnsiConsoleOutput(writer) });
        console.Profile.Width = width;
        TerminalReport.Write(console, document);
        return writer.ToString();
    }
}
