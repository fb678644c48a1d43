using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.Adjustment;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

/// <summary>Quantities that move every part of a kind at once.</summary>
public sealed class SharedQuantitiesTests
{
    private static Scenario Mixed => Scenario() with
    {
        Buses = [Bus("a"), Bus("b")],
        Batteries = [Cell("one", 0.9), Cell("two", 0.6)],
        Feeds =
        [
            Feed("plain", "a", "b", 4) with { Switch = new Switch { IsClosed = true, ContactResistance = Resistance.FromMilliohms(1) }, Shunt = Resistance.FromMilliohms(0.5) },
            Feed("steered", "a", "b", 2, Schottky(20, 1.05, 6)),
            Feed("bare", "a", "b"),
        ],
        Loads = [Amperes("load", "a", 1) with { Inputs = [new LoadInput("a", Schottky(20, 1.05, 6)), new LoadInput("b", Schottky(20, 1.05, 6))] }],
    };

    private static Scenario Set(string path, double value) => AdjustableQuantities.Find(Mixed, path)!.Set(Mixed, value);

    [Fact]
    public void FeedsResistance_Doubled_DoublesWiresAndContactsAndLeavesTheShunt()
    {
        var feeds = Set("feeds.resistance", 2).Feeds;

        Assert.Equal(10.5, feeds[0].ConductorResistance.Milliohms, 1e-9);
        Assert.Equal(4, feeds[1].ConductorResistance.Milliohms, 1e-9);
        Assert.Equal(0, feeds[2].ConductorResistance.Milliohms);
    }

    /// <summary>At one current, n kT/q ln(I/Is) rises by what Is falls.</summary>
    [Fact]
    public void DiodesDrop_Raised_RaisesEveryDiodeByAsManyVolts()
    {
        var raised = Set("diodes.drop", 0.05);

        Assert.All(
            raised.Feeds.Select(feed => feed.Diode).Concat(raised.Loads[0].Inputs.Select(input => input.Diode)).OfType<JunctionDiode>(),
            diode => Assert.Equal(20e-6 * Math.Exp(-0.05 / diode.EmissionVoltageAt(diode.Temperature).Volts), diode.SaturationCurrent.Amperes, 1e-12));
        Assert.Equal(3, raised.Feeds.Select(feed => feed.Diode).Concat(raised.Loads[0].Inputs.Select(input => input.Diode)).OfType<JunctionDiode>().Count());
    }

    [Fact]
    public void BatteriesHealth_AFactor_KeepsTheRatioOfTheBatteries() =>
        Assert.Equal([0.45, 0.3], Set("batteries.health", 0.5).Batteries.Select(battery => Math.Round(battery.Health, 12)));

    private static Battery Cell(string name, double health) =>
        Battery(name, "a", 10, 20, 1, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(10)) with { Health = health };
}
