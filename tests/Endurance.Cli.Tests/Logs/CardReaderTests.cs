using System.Collections.Immutable;
using System.Globalization;
using Endurance.Cli.Logs;
using Endurance.Studies.GroundTest;
using Endurance.Studies.Reconciliation;
using Endurance.Yaml;

namespace Endurance.Cli.Tests.Logs;

public sealed class CardReaderTests : IDisposable
{
    private const string Headings = "point,title,quantity,unit,predicted,tolerance,measured,remarks\n";

    private static readonly GroundTestPlan Plan = GroundTestStudy.Plan(ScenarioReader.ReadText("bench.yaml", Scenarios.Passing).Scenario!);

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    public static TheoryData<string, string> Dialects => new()
    {
        { "as written", Headings + "T2,display alone,bus main_bus,V,12.78,0.20,12.4,\r\nT2,display alone,load display,A,2.00,0.20,1.95,ok\r\n" },
        { "semicolons and decimal commas", "point;title;quantity;unit;predicted;tolerance;measured;remarks\nT2;display alone;bus main_bus;V;12,78;0,20;12,4;\nT2;display alone;load display;A;2,00;0,20;1,95;ok\n" },
        { "tabs, a mark and a separator line", "\uFEFFsep=\t\npoint\tquantity\tmeasured\nT2\tbus main_bus\t12.4\nT2\tload display\t1.95\n" },
        { "units, mixed signs, quotes", Headings + "T2,display alone,bus main_bus,V,12.78,0.20,12.4 V,\nT2,display alone,load display,A,2.00,0.20,\"1,95 A\",\n" },
        { "thousandths", Headings + "T2,display alone,bus main_bus,V,12.78,0.20,12400mV,\nT2,display alone,load display,A,2.00,0.20,1950 mA,\n" },
        { "the unit in its column", "Point,Quantity,Unit,Measured\n2,bus main_bus,mV,12400\nt2,load display,mA,1950\n" },
        { "out of order, short rows, apostrophes, comments", "measured,point,quantity,title\n# measured with the old meter\n'1.95,T2,load display\n,,,\n\n'12.4,'T2,bus main_bus,'display alone\n" },
        { "a row twice alike", Headings + "T2,,load display,,,,1.95,\nT2,,bus main_bus,,,,12.4,\nT2,,load display,,,,\"1,95\",\nT2,,load display,,,,,\n" },
    };

    [Theory]
    [MemberData(nameof(Dialects))]
    public void Card_InAnyDialect_HoldsTheSameReadings(string dialect, string text)
    {
        var (measured, diagnostics) = Read(text);

        Assert.True(diagnostics.IsEmpty, dialect + ": " + DiagnosticRenderer.Render(diagnostics));
        Assert.Equal([new MeasuredReading(2, ReadingKind.BusVolts, "main_bus", 12.4), new MeasuredReading(2, ReadingKind.LoadAmperes, "display", 1.95)], measured.ToArray());
    }

    [Fact]
    public void Dates_OfRows_GoWithTheirReadings()
    {
        var (measured, _) = Read("point,quantity,measured,date\nT2,bus main_bus,12.4,2026-05-02\nT2,load display,1.95,\n");

        Assert.Equal([new DateOnly(2026, 5, 2), null], measured.Select(reading => reading.Date));
    }

    [Theory]
    [InlineData("-0.3 A", -0.3)]
    [InlineData("\u22120,3", -0.3)]
    [InlineData("0", 0)]
    [InlineData("3.2e-1 A", 0.32)]
    public void Number_WithASign_IsRead(string text, double amperes) =>
        Assert.Equal(amperes, Read($"point,quantity,measured\nT2,load display,\"{text}\"\n").Measured[0].Value, 1e-12);

    [Theory]
    [InlineData("twelve", "not-a-number", "`twelve` is not a voltage")]
    [InlineData("1.234,5", "not-a-number", "`1.234,5` has more than one decimal sign")]
    [InlineData("nan", "not-a-number", "`nan` is not a voltage")]
    [InlineData("12.4 A", "wrong-unit", "`12.4 A` is a current, not a voltage")]
    [InlineData("12,4 v", "unknown-unit", "`v` is not a unit of a voltage")]
    [InlineData("1240", "out-of-range", "`1240` is too large")]
    public void Number_ThatIsNone_IsToldAtItsCell(string text, string code, string message)
    {
        var (measured, diagnostics) = Read($"point;quantity;measured\nT2;bus main_bus;{text}\n");

        Assert.Empty(measured);
        var told = Assert.Single(diagnostics);
        Assert.Equal((code, 2, 17, message), (told.Code, told.Line, told.Column, told.Message));
    }

    /// <summary>Everything wrong with a card, at once and whole.</summary>
    [Fact]
    public void Faults_OfEveryKind_AreAllTold()
    {
        var (measured, diagnostics) = Read(
            "point;title;quantity;measured;date\n"
            + "T2;display alone;load dispaly;1,95;\n"
            + "T99;display alone;load display;1,95;\n"
            + "T1;display alone;bus main_bus;12,4;\n"
            + "T2;display alone;load display;1.95 V;2.5.2026\n"
            + "T2;display alone;load display;2,0;\n"
            + "T2;display alone;load display;2,1;\n"
            + ";;load display;2,1;\n"
            + "T2;display alone;load display;2;1;0\n");

        Assert.Empty(measured);
        Assert.Equal(
            """
            card.csv:2:18: error[unknown-reading]: T2 has no reading `load dispaly`
              2 | T2;display alone;load dispaly;1,95;
                |                  ^^^^^^^^^^^^
              expected: one of bus main_bus, load display
              did you mean `load display`?

            card.csv:3:1: error[unknown-point]: the ground test of this scenario has no point `T99`
              3 | T99;display alone;load display;1,95;
                | ^^^
              expected: T1 to T12; write the card anew with `endurance testcard` if the scenario has changed since
              did you mean `T9`?

            card.csv:4:4: error[unknown-point]: T1 is `display alone` on the card and `ship_battery at rest` in the scenario
              4 | T1;display alone;bus main_bus;12,4;
                |    ^^^^^^^^^^^^^
              expected: a card that `endurance testcard` writes for this scenario
              did you mean `T2`?

            card.csv:5:31: error[wrong-unit]: `1.95 V` is a voltage, not a current
              5 | T2;display alone;load display;1.95 V;2.5.2026
                |                               ^^^^^^
              expected: a current such as 3.2 A, with or without its unit, or an empty cell

            card.csv:5:38: error[not-a-date]: `2.5.2026` is not a date
              5 | T2;display alone;load display;1.95 V;2.5.2026
                |                                      ^^^^^^^^
              expected: year, month and day, such as 2026-05-02, or an empty cell

            card.csv:7:31: error[measured-twice]: `2,1` is a second reading of load display at T2, which line 6 has otherwise
              7 | T2;display alone;load display;2,1;
                |                               ^^^
              expected: one reading; delete the other, or leave its cell empty

            card.csv:8:1: error[unknown-point]: this row names no point
              8 | ;;load display;2,1;
                | ^
              expected: T1 to T12; write the card anew with `endurance testcard` if the scenario has changed since

            card.csv:9:35: error[cell-count]: this line has 6 cells
              9 | T2;display alone;load display;2;1;0
                |                                   ^
              expected: 5, as there are headings

            """,
            DiagnosticRenderer.Render(diagnostics));
    }

    [Theory]
    [InlineData("", "log-empty", "the card is empty")]
    [InlineData("measured\n12.4\n", "no-separator", "the line of headings has one column")]
    [InlineData("point,quantity,measurd\nT2,load display,2\n", "column-missing", "no column is headed `measured`")]
    [InlineData("point,quantity,measured,Measured\nT2,load display,2,\n", "column-twice", "`Measured` is a heading for the second time")]
    [InlineData("point,quantity,measured\nT2,load display,\n", "nothing-measured", "no reading is filled in")]
    [InlineData("point,quantity,measured\n", "nothing-measured", "no reading is filled in")]
    [InlineData("point,quantity,measured\nT2,\"load display,2\n", "quotes", "the quotation marks of this line do not pair")]
    [InlineData(Headings + "T2,display alone,load display,A,2.00,0.20,1,95\n", "decimal-comma", "`1,95` looks like a decimal comma between commas that part the cells")]
    [InlineData(Headings + "T2,display alone,load display,A,2.00,0.20,1,95,\n", "cell-count", "this line has 9 cells")]
    public void Card_ThatCannotBeRead_SaysWhy(string text, string code, string message)
    {
        var (measured, diagnostics) = Read(text);

        Assert.Empty(measured);
        Assert.Contains((code, message), diagnostics.Select(told => (told.Code, told.Message)));
    }

    [Fact]
    public void Card_OfAnotherScenario_IsReadWithAWarning()
    {
        var (measured, diagnostics) = Read(Headings + "T2,display alone,bus main_bus,V,12.20,0.20,12.1,\nT2,display alone,load display,A,3.00,0.20,2,\nT1,ship_battery at rest,bus main_bus,V,12.5,0.20,,\n");

        Assert.Equal(2, measured.Length);
        Assert.Equal(
            "card.csv:2:33: warning[card-differs]: T2 predicts 12.20 V for bus main_bus on the card, and 12.78 V now, and 1 more points have other predictions",
            DiagnosticRenderer.Render(diagnostics).Split('\n')[0]);
    }

    [Fact]
    public void Card_UnderACultureOfCommas_IsReadAlike()
    {
        var german = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        german.NumberFormat.NumberDecimalSeparator = ",";
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = german;
        try
        {
            Assert.Equal(1.95, Read("point,quantity,measured\nT2,load display,1.95\n").Measured[0].Value);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private (ImmutableArray<MeasuredReading> Measured, ImmutableArray<Diagnostic> Diagnostics) Read(string text)
    {
        var (measured, diagnostics) = CardReader.Read(_folder.Write("card.csv", text), Plan);
        return (measured, [.. diagnostics.Select(told => told with { File = Path.GetFileName(told.File) })]);
    }
}
