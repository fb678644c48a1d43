using Endurance.Components;
using Endurance.Quantities;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Components;

public sealed class FeedTests
{
    /// <summary>Each part has a resistance of its own power of two, so that no part can be left out or counted for another.</summary>
    [Fact]
    public void ConductorResistance_EveryKindOfPart_IsTheirSum()
    {
        var feed = Feed("feed", "a", "b", 1) with
        {
            Contactor = new Contactor { IsClosed = true, ContactResistance = Resistance.FromMilliohms(2) },
            Switch = new Switch { IsClosed = true, ContactResistance = Resistance.FromMilliohms(4) },
            Breaker = Protecting(ProtectionKind.Breaker, 8),
            Fuse = Protecting(ProtectionKind.Fuse, 16),
            FusibleLink = Protecting(ProtectionKind.FusibleLink, 32),
            Resistor = new SeriesResistor(Resistance.FromMilliohms(64), null),
            Shunt = Resistance.FromMilliohms(128),
            Return = new ReturnPath { Wire = Wire(256) },
        };

        Assert.Equal(511, feed.ConductorResistance.Milliohms, 1e-9);
    }

    [Fact]
    public void ConductorResistance_NoParts_IsNone() => Assert.Equal(0, Feed("feed", "a", "b").ConductorResistance.Ohms);

    [Fact]
    public void Feed_WithoutAnyResistance_GetsATenthOfAMilliohm()
    {
        var scenario = Scenario() with
        {
            Buses = [Bus("a"), Bus("b")],
            Batteries = [Battery("battery", "a", 10, 20, 1.1, Table((0, 12), (100, 12)), Endurance.Numerics.PiecewiseLinear.Constant(10))],
            Feeds = [Feed("feed", "a", "b")],
            Loads = [Amperes("load", "b", 10)],
        };

        var run = scenario.Run();

        Assert.Equal(0.001, (run.Bus("a").StartVoltage - run.Bus("b").StartVoltage).Volts, 1e-9);
        Assert.Equal(11.9, run.Bus("a").StartVoltage.Volts, 1e-9);
    }

    [Theory]
    [InlineData(false, true, true)]
    [InlineData(true, false, true)]
    [InlineData(true, true, false)]
    public void Feed_OnePartOpen_DoesNotConduct(bool contactor, bool @switch, bool breaker)
    {
        var feed = Feed("feed", "a", "b", 3) with
        {
            Contactor = new Contactor { IsClosed = contactor },
            Switch = new Switch { IsClosed = @switch },
            Breaker = new Protection { Kind = ProtectionKind.Breaker, Rating = Current.FromAmperes(20), IsClosed = breaker },
        };
        var scenario = Scenario() with
        {
            Buses = [Bus("a"), Bus("b")],
            Batteries = [Battery("battery", "a", 10, 20, 1.1, Table((0, 12), (100, 12)), Endurance.Numerics.PiecewiseLinear.Constant(10))],
            Feeds = [feed],
            Loads = [Amperes("load", "b", 10)],
        };

        var run = scenario.Run();

        Assert.Equal(0, run.Feed("feed").HighestCurrent.Amperes);
        Assert.Equal(0, run.Bus("b").StartVoltage.Volts);
    }

    private static Protection Protecting(ProtectionKind kind, double milliohms) =>
        new() { Kind = kind, Rating = Current.FromAmperes(20), Resistance = Resistance.FromMilliohms(milliohms) };
}
