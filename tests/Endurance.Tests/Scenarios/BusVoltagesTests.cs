using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Scenarios;

public sealed class BusVoltagesTests
{
    /// <summary>A 28 V main bus with its alternator; avionics at 13.8 V behind a converter, and 5 V sockets behind another.</summary>
    private static readonly Scenario Mixed = Scenario() with
    {
        System = SystemVoltage.Volts28,
        Buses = [Bus("main"), Bus("far"), Bus("avionics"), Bus("panel"), Bus("sockets")],
        Alternators = [Alternator("alternator", "main", 28.4, 10, 60)],
        Feeds = [Feed("tie", "far", "main", 5), Feed("panel_feed", "avionics", "panel", 5)],
        Chargers = [Converter("converter", "far", "avionics", 13.8, 0.8), Converter("socket_supply", "panel", "sockets", 5, 0.5)],
    };

    [Theory]
    [InlineData("main", 28, 1)]
    [InlineData("far", 28, 1)]
    [InlineData("avionics", 14, 14 / (28 * 0.8))]
    [InlineData("panel", 14, 14 / (28 * 0.8))]
    [InlineData("sockets", 5, 5 / (14 * 0.5) * (14 / (28 * 0.8)))]
    [InlineData("no_such_bus", 28, 1)]
    public void Bus_OfAMixedSystem_StandsAtItsConvertersVoltage(string bus, double volts, double atSystem)
    {
        var voltages = new BusVoltages(Mixed);

        Assert.Equal(volts, voltages.Of(bus).Volts);
        Assert.Equal(volts * 12 / 14, voltages.OfBattery(bus).Volts, 1e-9);
        Assert.Equal(atSystem, voltages.AtSystem(bus), 1e-9);
        Assert.Equal(atSystem != 1, voltages.IsBehindConverter(bus));
    }

    [Fact]
    public void Bus_ThatAFeedTiesToTheAlternatorToo_StandsAtTheSystemsVoltage()
    {
        var contactor = new Contactor { IsClosed = false };
        var tied = Mixed with { Feeds = [.. Mixed.Feeds, Feed("emergency", "main", "panel") with { Contactor = contactor }] };

        Assert.Equal(28, new BusVoltages(tied).Of("avionics").Volts);
        Assert.Equal(1, new BusVoltages(tied).AtSystem("avionics"));
    }

    [Fact]
    public void Bus_BehindTwoConverters_TakesTheLowerVoltageAndTheWorseEfficiency()
    {
        var two = Mixed with { Chargers = [.. Mixed.Chargers, Converter("second", "main", "panel", 12, 0.7)] };

        Assert.Equal(14, new BusVoltages(two).Of("panel").Volts);
        Assert.Equal(14 / (28 * 0.7), new BusVoltages(two).AtSystem("panel"), 1e-9);
    }

    [Fact]
    public void Converters_ThatFeedEachOther_End()
    {
        var ring = Scenario() with
        {
            Buses = [Bus("a"), Bus("b")],
            Chargers = [Converter("up", "a", "b", 14, 0.9), Converter("down", "b", "a", 14, 0.9)],
        };

        Assert.Equal(1 / 0.9, new BusVoltages(ring).AtSystem("a") * 0.9, 1e-9);
    }

    private static Charger Converter(string name, string from, string to, double volts, double efficiency) => new()
    {
        Name = name,
        From = from,
        To = to,
        Output = Voltage.FromVolts(volts),
        Limit = Current.FromAmperes(20),
        Efficiency = efficiency,
        Droop = Resistance.FromMilliohms(5),
    };
}
