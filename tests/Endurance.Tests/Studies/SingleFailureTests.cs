using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Reports;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;
using Endurance.Studies.SingleFailures;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

/// <summary>Two batteries through two diodes into one bus: what every single failure does is known by hand.</summary>
public sealed class SingleFailureTests
{
    /// <summary>2 A of 10 Ah at 1 h without Peukert: 300 min on one battery, 600 on both.</summary>
    private static Scenario Pair => Scenario(horizonHours: 8) with
    {
        Buses = [Bus("bus1"), Bus("bus2"), Bus("bus")],
        Batteries = [TenAmpereHours("b1", "bus1"), TenAmpereHours("b2", "bus2")],
        Feeds = [Feed("d1", "bus1", "bus", 1, Schottky(20, 1.05, 6)), Feed("d2", "bus2", "bus", 1, Schottky(20, 1.05, 6))],
        Loads = [Amperes("display", "bus", 2, 9)],
        FailureCases = [Case()],
        Requirements = [new Requirement { Loads = ["display"], Endure = Duration.FromMinutes(400) }],
    };

    [Theory]
    [InlineData("b1", "open", 300, true)]
    [InlineData("b1", "flat", 300, true)]
    [InlineData("d1", "diode open", 300, true)]
    [InlineData("d1", "wire open", 300, true)]
    public void Failure_OfOneOfTwoPaths_LeavesTheOther(string part, string mode, double minutes, bool hidden)
    {
        var row = Assert.Single(SingleFailureStudy.Run(Pair, new SingleFailureOptions()), row => Is(row, part, mode) && IsCase(row));

        Assert.Equal(minutes, row.Endurance.Minutes(), 0.5);
        Assert.Equal(Verdict.Fail, row.Verdict);
        Assert.Equal(["display"], row.Lost.AsEnumerable());
        Assert.Equal(hidden, row.IsHidden);
    }

    [Fact]
    public void DiodeShort_WithTwoGoodBatteries_LosesNothing()
    {
        var row = Assert.Single(SingleFailureStudy.Run(Pair, new SingleFailureOptions()), row => Is(row, "d1", "short") && IsCase(row));

        Assert.Null(row.Endurance);
        Assert.Equal(Verdict.Pass, row.Verdict);
        Assert.True(row.IsHidden);
        Assert.Contains("nothing must come back", row.RevealedBy, StringComparison.Ordinal);
    }

    [Fact]
    public void BusShort_OnTheLoadsOwnBus_IsSeenAtOnce()
    {
        var row = Assert.Single(SingleFailureStudy.Run(Pair, new SingleFailureOptions()), row => Is(row, "bus", "short to ground") && IsCase(row));

        Assert.Equal(0, row.Endurance.Minutes(), 1e-6);
        Assert.False(row.IsHidden);
        Assert.Equal("display stops", row.RevealedBy);
    }

    [Fact]
    public void Pairs_SecondPartOutOfThePath_EqualTheSingleFailure()
    {
        var aside = Pair with { Buses = Pair.Buses.Add(Bus("aside")), Feeds = Pair.Feeds.Add(Feed("spare", "bus", "aside", 1)) };
        var single = Assert.Single(SingleFailureStudy.Run(aside, new SingleFailureOptions()), row => Is(row, "b1", "open") && IsCase(row));
        var pair = Assert.Single(SingleFailureStudy.Run(aside, new SingleFailureOptions { Pairs = true }), row => Is(row, "b1 + spare", "open + wire open") && IsCase(row));

        Assert.Equal(single.Endurance.Minutes(), pair.Endurance.Minutes(), 1e-4);
        Assert.Equal(single.Lost.AsEnumerable(), pair.Lost.AsEnumerable());
    }

    [Fact]
    public void StepNotDone_LeavesTheStepOutOfItsOwnCaseOnly()
    {
        var shed = Pair with
        {
            Loads = Pair.Loads.Add(Amperes("heat", "bus", 2) with { IsEssential = false }),
            FailureCases = [Case(At(1, (ActionVerb.Shed, "heat"))), Case() with { Name = "other" }],
        };
        var rows = SingleFailureStudy.Run(shed, new SingleFailureOptions());

        var row = Assert.Single(rows, row => Is(row, "heat", "not done"));
        Assert.Equal("case", row.Case);
        Assert.Equal(300, row.Endurance.Minutes(), 0.5);
    }

    [Fact]
    public void AlternatorOff_HiddenAtFirstByTheBattery_IsSeenAsTheBatterySags()
    {
        // Half full at 12 V with 5 mohm: 20 A without the alternator leave 11.9 V at once, and after 10 min
        // a third of the charge, two thirds of a volt, is gone as well: 12 - 2/3 - 0.1 = 11.2 V.
        var scenario = Scenario(horizonHours: 8) with
        {
            Buses = [Bus("bus")],
            Batteries = [Battery("b", "bus", 10, 1, 1, new PiecewiseLinear([0, 1], [11, 13]), PiecewiseLinear.Constant(5)) with { InitialCharge = 0.5 }],
            Alternators = [Alternator("alternator", "bus", 12, 1, 40)],
            Loads = [Amperes("display", "bus", 20, 9)],
        };

        var row = Assert.Single(SingleFailureStudy.Run(scenario, new SingleFailureOptions()), row => Is(row, "alternator", "off"));

        Assert.False(row.IsHidden);
        Assert.Equal("voltmeter on bus: 11.2 V for 12.0 V after 10 min", row.RevealedBy);
    }

    /// <summary>Set to 15 V at most 40 A: 13 V and 5 mohm take 40 A at 13.2 V whatever the set-point; a full battery of limited acceptance lets the bus rise to 1.25 times that.</summary>
    [Theory]
    [InlineData(null, "not shown by this model: without charge_acceptance b takes all the current there is, full or not")]
    [InlineData(1.0, "voltmeter on bus: 18.7 V for 15.0 V")]
    public void OverVoltage_IsNeverCalledHiddenForABatteryThatTakesEverything(double? acceptance, string revealedBy)
    {
        var scenario = Scenario(horizonHours: 8) with
        {
            Buses = [Bus("bus")],
            Batteries = [Battery("b", "bus", 10, 1, 1, PiecewiseLinear.Constant(13), PiecewiseLinear.Constant(5)) with { ChargeAcceptancePerHour = acceptance }],
            Alternators = [Alternator("alternator", "bus", 15, 1, 40)],
            Loads = [Amperes("display", "bus", 2, 9)],
        };

        var row = Assert.Single(SingleFailureStudy.Run(scenario, new SingleFailureOptions()), row => Is(row, "alternator", "over-voltage"));

        Assert.False(row.IsHidden);
        Assert.Equal(revealedBy, row.RevealedBy);
    }

    [Fact]
    public void ShortedCell_OfABatteryOfUnknownCells_IsToldAsNotTried()
    {
        var known = Pair with { Batteries = Pair.Batteries.SetItem(0, Pair.Batteries[0] with { Cells = 6 }) };

        var untried = Assert.Single(UntriedFailure.Of(known));

        Assert.Equal(("b2", FailureMode.ShortedCell), (untried.Part, untried.Mode));
        Assert.Equal("A shorted cell of b2 is not tried: how many cells it has is not known. Give cells or a chemistry.", untried.Why);
        Assert.DoesNotContain(SingleFailureStudy.Run(known, new SingleFailureOptions()), row => Is(row, "b2", "shorted cell"));
    }

    /// <summary>Both ignitions hang on one bus, the displays on two: each bus alone takes its own.</summary>
    [Fact]
    public void Headline_NamesWhatTakesBothIgnitionsAndTheLastDisplay()
    {
        var scenario = Scenario(horizonHours: 1) with
        {
            Buses = [Bus("one"), Bus("two")],
            Batteries = [TenAmpereHours("b1", "one"), TenAmpereHours("b2", "two")],
            Loads = [Amperes("left_ignition", "one", 0.1, 9), Amperes("Right Ignition", "one", 0.1, 9), Amperes("display_a", "one", 0.1, 9), Amperes("display_b", "two", 0.1, 9)],
            FailureCases = [Case()],
        };

        var text = MarkdownReport.Write(FailureReport.Describe(Endurance.Tests.Reports.StudyFixture.Failures(scenario), "case"));

        Assert.Contains("| takes both ignitions: left_ignition, Right Ignition | b1, open | on its own | left_ignition 0.0 min, Right Ignition 0.0 min | 0.0 |", text, StringComparison.Ordinal);
        Assert.Contains("| takes the last display: display_a, display_b | none |", text, StringComparison.Ordinal);
    }

    /// <summary>Fan 6 A, heat 2 A and display 2 A: 1 min at 10 A and the rest at 4 A drain 10 Ah in 148.5 min; 10 A drain 20 Ah in 120 min.</summary>
    [Theory]
    [InlineData("b1 + heat", "open + not done", 148.5)]
    [InlineData("fan + heat", "not done + not done", 120)]
    public void Pair_WithAStepNotDone_LeavesOutThatStepAlone(string part, string mode, double minutes)
    {
        var shed = Pair with
        {
            Loads = Pair.Loads.AddRange(Amperes("fan", "bus", 6) with { IsEssential = false }, Amperes("heat", "bus", 2) with { IsEssential = false }),
            FailureCases = [Case(At(1, (ActionVerb.Shed, "fan")), At(2, (ActionVerb.Shed, "heat")))],
        };

        var row = Assert.Single(SingleFailureStudy.Run(shed, new SingleFailureOptions { Pairs = true }), row => Is(row, part, mode));

        Assert.Equal(minutes, row.Endurance.Minutes(), 0.5);
    }

    private static bool Is(FailureRow row, string part, string mode) =>
        string.Equals(row.Part, part, StringComparison.Ordinal) && string.Equals(row.Mode, mode, StringComparison.Ordinal);

    private static bool IsCase(FailureRow row) => string.Equals(row.Case, "case", StringComparison.Ordinal);

    private static Battery TenAmpereHours(string name, string bus) =>
        Battery(name, bus, 10, 1, 1, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(5));
}
