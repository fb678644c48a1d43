using Endurance.Components;
using Endurance.Library;
using Endurance.Quantities;
using Xunit;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Library;

public class DiodeTableTests
{
    private static readonly Temperature At27 = Temperature.FromKelvin(300.15);

    /// <summary>Forward volts computed by hand from the published Shockley sets at 300.15 K: 1N5822, 1N1206A and MBR845.</summary>
    [Theory]
    [InlineData("schottky_3a", 1, 0.3541)]
    [InlineData("schottky_3a", 3, 0.4056)]
    [InlineData("schottky_3a", 10, 0.5157)]
    [InlineData("silicon_12a", 1, 0.7899)]
    [InlineData("silicon_12a", 3, 0.8452)]
    [InlineData("silicon_12a", 10, 0.9226)]
    [InlineData("schottky_8a", 1, 0.3441)]
    [InlineData("schottky_8a", 3, 0.4060)]
    [InlineData("schottky_8a", 10, 0.5314)]
    public void ForwardVoltage_OfAShockleySet_IsThePublishedOne(string name, double amperes, double volts) =>
        Assert.Equal(volts, Junction(name).ForwardVoltageAt(Current.FromAmperes(amperes), At27).Volts, 0.001);

    /// <summary>Greatest drops of data sheets: 1N5404 1.0 V at 3 A; GBPC25 1.1 V a leg at 12.5 A; DS23003 0.525 V at 3 A.</summary>
    [Theory]
    [InlineData("silicon_3a", 3, 1.0, 0.001)]
    [InlineData("bridge_leg", 12.5, 1.1, 0.001)]
    [InlineData("bridge_two_legs", 12.5, 2.2, 0.001)]
    [InlineData("schottky_3a", 3, 0.525, 0.2)]
    public void ForwardVoltage_AtTheSheetsCurrent_IsAtMostItsLimit(string name, double amperes, double limit, double below) =>
        Assert.InRange(Junction(name).ForwardVoltageAt(Current.FromAmperes(amperes), At27).Volts, limit - below, limit + 1e-9);

    /// <summary>PD-2.318: a leg drops at most 0.57 V at 7.5 A and 0.72 V at 15 A at 125 degC, 0.84 V at 15 A at 25 degC.</summary>
    [Theory]
    [InlineData(15, 125, 0.57, 0.001)]
    [InlineData(30, 125, 0.72, 0.001)]
    [InlineData(30, 25, 0.84, 0.1)]
    public void ForwardVoltage_OfBothLegsOfADualSchottky_IsThatOfALegAtHalfTheCurrent(double amperes, double celsius, double limit, double below) =>
        Assert.InRange(Junction("schottky_15a").ForwardVoltageAt(Current.FromAmperes(amperes), Temperature.FromCelsius(celsius)).Volts, limit - below, limit + 1e-6);

    [Theory]
    [InlineData(0)]
    [InlineData(25)]
    [InlineData(100)]
    public void ForwardVoltage_OfTwoLegs_IsTwiceThatOfOneAtEveryTemperature(double celsius)
    {
        var junction = Temperature.FromCelsius(celsius);
        var amperes = Current.FromAmperes(6);

        Assert.Equal(2 * Junction("bridge_leg").ForwardVoltageAt(amperes, junction).Volts, Junction("bridge_two_legs").ForwardVoltageAt(amperes, junction).Volts, 1e-9);
    }

    /// <summary>Drop of an ideal-diode controller: the greater of 20 mV and I Ron (regulated drop of a product page; integrated 7 A part of 15 mohm).</summary>
    [Theory]
    [InlineData(0.5, 0.020)]
    [InlineData(1, 0.020)]
    [InlineData(3, 0.045)]
    [InlineData(7, 0.105)]
    public void IdealController_CarryingACurrent_DropsTheGreaterOfItsTwoLaws(double amperes, double volts)
    {
        var run = (Scenario() with
        {
            Buses = [Bus("battery_bus"), Bus("bus")],
            Batteries = [Battery("battery", "battery_bus", 20, 20, 1.15, Table((0, 11), (100, 12.8)), Table((0, 10), (100, 10)))],
            Feeds = [Feed("feed", "battery_bus", "bus", diode: DiodeTable.Find("ideal_controller_7a")!.Diode)],
            Loads = [Amperes("load", "bus", amperes, 1)],
        }).Run();

        Assert.Equal(volts, (run.Bus("battery_bus").StartVoltage - run.Bus("bus").StartVoltage).Volts, 0.0011);
    }

    [Fact]
    public void Rows_HaveEachTheirOwnNameAndASource()
    {
        Assert.Equal(DiodeTable.Rows.Length, DiodeTable.Rows.Select(row => row.Name).Distinct(StringComparer.Ordinal).Count());
        Assert.All(DiodeTable.Rows, row => Assert.NotEqual("", row.Source));
        Assert.All(DiodeTable.Rows, row => Assert.Equal(row.HeatPath is null, row.HeatPathTo is null));
        Assert.All(DiodeTable.Rows, row => Assert.Same(row, DiodeTable.Find(row.Name)));
        Assert.Null(DiodeTable.Find("schottky"));
    }

    private static JunctionDiode Junction(string name) => Assert.IsType<JunctionDiode>(DiodeTable.Find(name)!.Diode);
}
