using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Tests.Simulation.Events;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation;

/// <summary>What a run tells of its parts besides their losses.</summary>
public sealed class OutcomeTests
{
    private const double Minutes = 1e-6;

    /// <summary>An alternator on the far bus, over a feed from the battery's bus.</summary>
    [Theory]
    [InlineData(ActionVerb.Fail, "battery", 5.0)]
    [InlineData(ActionVerb.Open, "feed", 5.0)]
    [InlineData(ActionVerb.Shed, "lamp", null)]
    public void Alternator_WhoseBatteryIsGone_IsAloneFromThatMinute(ActionVerb verb, string target, double? minutes)
    {
        var run = Tied(null).Run(Case(At(5, (verb, target)), At(9, (ActionVerb.Shed, "lamp"))));

        Assert.Equal(minutes ?? double.PositiveInfinity, run.Alternators.Single().TimeAlone.Minutes(), Minutes);
        Assert.Null(run.Alternators.Single().TimeUnexcited);
    }

    /// <summary>A diode towards the alternator lets the battery hold its bus; it takes a failed alternator no notice of.</summary>
    [Fact]
    public void Alternator_BehindADiodeFromItsBattery_IsNotAlone()
    {
        Assert.Null(Tied(Schottky(20, 1.05, 6)).Run().Alternators.Single().TimeAlone);
        Assert.Null(Tied(null).Run(Case(At(1, (ActionVerb.Fail, "alternator")), At(5, (ActionVerb.Open, "feed")))).Alternators.Single().TimeAlone);
    }

    /// <summary>The other way round the diode carries the alternator's current to the battery and nothing back.</summary>
    [Fact]
    public void Alternator_BehindADiodeTowardsItsBattery_IsAloneFromTheStart()
    {
        var scenario = Tied(null) with { Feeds = [Feed("feed", "far", "near", 10, Schottky(20, 1.05, 6))] };

        Assert.Equal(0, scenario.Run().Alternators.Single().TimeAlone.Minutes(), Minutes);
    }

    /// <summary>Its field is fed from a bus of its own, whose battery fails at 5 min.</summary>
    [Theory]
    [InlineData(null, null, 5.0)]
    [InlineData(ActionVerb.Stop, "engine", null)]
    [InlineData(ActionVerb.Fail, "alternator", null)]
    [InlineData(ActionVerb.Shed, "alternator", null)]
    public void Alternator_WhoseFieldBusDies_IsUnexcitedFromThatMinuteIfItWouldRun(ActionVerb? verb, string? target, double? minutes)
    {
        var field = new AlternatorField { Bus = "control", Current = Current.FromAmperes(2), IsOn = true };
        var scenario = Ramp.Standing(12.5, Ohms("lamp", "bus", 2)) with
        {
            Buses = [Bus("bus"), Bus("control")],
            Batteries = [Ramp.Steady(12.5), Ramp.Steady(12.5, "small", "control")],
            Alternators = [Alternator("alternator", "bus", 14, 10, 40) with { DrivenBy = "engine", Field = field }],
        };
        TimelineStep[] steps = verb is { } first ? [At(3, (first, target!))] : [];

        var run = scenario.Run(Case([.. steps, At(5, (ActionVerb.Fail, "small"))]));

        Assert.Equal(minutes ?? double.PositiveInfinity, run.Alternators.Single().TimeUnexcited.Minutes(), Minutes);
        Assert.Equal((verb is ActionVerb.Shed ? 3 : 5) * 2 / 60.0, run.Battery("small").Delivered.AmpereHours, 1e-6); // the field is drawn while both are on
    }

    /// <summary>12 V and 14 V behind 10 mohm each over a shorted diode of 2 mohm: 2 V/22 mohm back for 36 s.</summary>
    [Fact]
    public void ReverseCharge_OfAShortedDiode_IsItsCurrentOverTheTime()
    {
        var scenario = Scenario(0.01) with
        {
            Buses = [Bus("bus"), Bus("far")],
            Batteries = [Ramp.Steady(12), Ramp.Steady(14, "higher", "far")],
            Feeds = [Feed("diode", "bus", "far", diode: Schottky(20, 1.05, 6) with { ShortResistance = Resistance.FromMilliohms(2) })],
        };

        var run = scenario.Run(Case(At(0, (ActionVerb.Short, "diode"))));

        Assert.Equal(2 / 0.022 * 0.01, run.Feed("diode").ReverseCharge.AmpereHours, 1e-6);
        Assert.Equal(2 / 0.022 * 0.01, run.Battery("battery").Received.AmpereHours, 1e-6);
        Assert.Equal(2 / 0.022 * 0.01 * (14 - (0.01 * 2 / 0.022)), run.Battery("higher").DeliveredEnergy.WattHours, 1e-5);
    }

    /// <summary>10 A for ten minutes and then 4 A, or 0.2 A, which is less than the 20-hour current of 0.5 A and counts in no law.</summary>
    [Theory]
    [InlineData(4, 4)]
    [InlineData(0.2, 10)]
    public void Currents_OfABatteryAndAFeed_AreTheirExtremes(double left, double lowestDischarge)
    {
        var scenario = Ramp.Falling(Amperes("large", "far", 10 - left), Amperes("small", "far", left)) with
        {
            Buses = [Bus("bus"), Bus("far")],
            Feeds = [Feed("feed", "bus", "far", 1)],
        };

        var run = scenario.For(30).Run(Case(At(10, (ActionVerb.Shed, "large"))));

        Assert.Equal((10, 10, left), Rounded(run.Battery("battery").StartCurrent, run.Battery("battery").HighestCurrent, run.Feed("feed").LowestCurrent));
        Assert.Equal((10, 10, lowestDischarge), Rounded(run.Feed("feed").StartCurrent, run.Feed("feed").HighestCurrent, run.Battery("battery").LowestDischarge!.Value));
    }

    /// <summary>Of what is not there nothing is told: no cutoff, no heat in a wire; 14 V behind 10 mohm give a lamp of 2 ohm 6.97 A.</summary>
    [Fact]
    public void Outcomes_OfPartsWithAndWithoutACutoffAndADiode_TellWhatThereIs()
    {
        var scenario = Scenario(0.1) with
        {
            Buses = [Bus("bus", 11), Bus("far"), Bus("tail")],
            Alternators = [Alternator("alternator", "bus", 14, 10, 40)],
            Feeds = [Feed("wire", "bus", "far", 10), Feed("diode", "bus", "tail", diode: new IdealDiodeController { OnResistance = Resistance.FromMilliohms(4), RegulatedDrop = Voltage.Zero })],
            Loads = [Ohms("lamp", "bus", 2)],
        };

        var run = scenario.Run();

        Assert.Equal(11, run.Bus("bus").Cutoff!.Value.Volts);
        Assert.Null(run.Bus("far").Cutoff);
        Assert.Null(run.Feed("wire").HighestDiodePower);
        Assert.Equal(0, run.Feed("diode").HighestDiodePower!.Value.Watts, 1e-9);
        Assert.Equal(14 / 2.01, run.Alternators.Single().HighestCurrent.Amperes, 1e-6);
    }

    /// <summary>Two batteries at an alternator's bus hold it as one does.</summary>
    [Fact]
    public void Alternator_BesideTwoBatteries_IsNotAlone()
    {
        var scenario = Tied(null);

        Assert.Null((scenario with { Batteries = [scenario.Batteries[0], scenario.Batteries[0] with { Name = "second" }] }).Run().Alternators.Single().TimeAlone);
    }

    /// <summary>Each part of a feed that is drawn open keeps it open.</summary>
    [Theory]
    [InlineData("breaker")]
    [InlineData("fuse")]
    [InlineData("link")]
    [InlineData("switch")]
    [InlineData("contactor")]
    public void Feed_WithAPartDrawnOpen_DoesNotConduct(string part)
    {
        var open = new Protection { Kind = ProtectionKind.Breaker, Rating = Current.FromAmperes(5), IsClosed = false };
        var plain = Feed("feed", "near", "far", 10);
        var feed = part switch
        {
            "breaker" => plain with { Breaker = open },
            "fuse" => plain with { Fuse = open with { Kind = ProtectionKind.Fuse } },
            "link" => plain with { FusibleLink = open with { Kind = ProtectionKind.FusibleLink } },
            "switch" => plain with { Switch = new Switch { IsClosed = false } },
            _ => plain with { Contactor = new Contactor { IsClosed = false } },
        };

        var run = (Tied(null) with { Alternators = [], Feeds = [feed] }).Run();

        Assert.Equal(LossReason.NeverFed, run.Load("lamp").LostBecause);
        Assert.Equal(0, run.Battery("battery").StartCurrent.Amperes, 1e-9);
    }

    [Theory]
    [InlineData("front", "lamp")]
    [InlineData("aft", "other")]
    public void Selector_AtAPosition_ClosesThatFeedAlone(string at, string fed)
    {
        var scenario = Ramp.Standing(12, Ohms("lamp", "far", 2), Ohms("other", "tail", 2)) with
        {
            Buses = [Bus("bus"), Bus("far"), Bus("tail")],
            Feeds = [Feed("feed", "bus", "far", 10), Feed("spare", "bus", "tail", 10)],
            Selectors = [new Selector { Name = "selector", Positions = [("front", "feed"), ("aft", "spare")], At = at }],
        };

        var run = scenario.Run();

        Assert.Equal(fed, Assert.Single(run.Loads, load => load.LostBecause is null).Name);
        Assert.Equal(12 / 2.02, run.Battery("battery").StartCurrent.Amperes, 1e-6);
    }

    [Fact]
    public void LowestDischarge_OfABatteryThatGivesNothing_IsAbsent() =>
        Assert.Null(Ramp.Standing(12).Run().Battery("battery").LowestDischarge);

    private static (double First, double Second, double Third) Rounded(Current first, Current second, Current third) =>
        (Math.Round(first.Amperes, 6), Math.Round(second.Amperes, 6), Math.Round(third.Amperes, 6));

    private static Scenario Tied(Diode? diode) => Ramp.Standing(12.5, Ohms("lamp", "far", 2), Ohms("other", "far", 20)) with
    {
        Buses = [Bus("near"), Bus("far")],
        Batteries = [Ramp.Steady(12.5, bus: "near") with { Resistance = PiecewiseLinear.Constant(0.01) }],
        Alternators = [Alternator("alternator", "far", 14, 10, 40)],
        Feeds = [Feed("feed", "near", "far", 10, diode) with { Switch = new Switch { IsClosed = true } }],
    };
}
