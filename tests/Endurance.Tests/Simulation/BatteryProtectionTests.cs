using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation;

public sealed class BatteryProtectionTests
{
    private static readonly PiecewiseLinear Emf = Table((0, 10), (100, 13));
    private static readonly PiecewiseLinear Milliohms = PiecewiseLinear.Constant(20);

    /// <summary>EMF 10 + 3 z behind 20 mohm at 10 A: 11.2 V at the terminals means z = 1.4/3, after (1 - 1.4/3) h.</summary>
    [Fact]
    public void UnderVoltage_OpensAtOnce_BusGoesToZeroAndExhaustionIsNotReported()
    {
        var run = Bench(new() { OpensBelow = Voltage.FromVolts(11.2) }, Amperes("load", "bus", 10, 9)).Run();

        Assert.Equal((1 - (1.4 / 3)) * 60, run.Load("load").TimePowered.Minutes(), 1e-3);
        Assert.Equal(LossReason.BatteryProtection, run.Load("load").LostBecause);
        Assert.Equal(0, run.Bus("bus").LowestVoltage.Volts);
        Assert.Null(run.Battery("battery").TimeToExhaustion);
        Assert.Equal(1.4 / 3, run.Battery("battery").ChargeEnd, 1e-5);
    }

    [Fact]
    public void OverCurrent_OpensAtTheConnection()
    {
        var scenario = Bench(new() { OpensAbove = Current.FromAmperes(15) }, Amperes("load", "bus", 10, 9), Amperes("starter", "bus", 8) with { IsOn = false });

        var run = scenario.Run(Case(At(6, (ActionVerb.Connect, "starter"))));

        Assert.Equal(6, run.Load("load").TimePowered.Minutes(), 1e-6);
        Assert.Equal(LossReason.BatteryProtection, run.Load("load").LostBecause);
    }

    [Fact]
    public void Opened_WhenTheLoadIsGone_StaysOpen()
    {
        var scenario = Bench(new() { OpensAbove = Current.FromAmperes(15) }, Amperes("load", "bus", 10), Amperes("starter", "bus", 8) with { IsOn = false });

        var run = scenario.Run(Case(At(6, (ActionVerb.Connect, "starter")), At(7, (ActionVerb.Shed, "starter")), At(20, (ActionVerb.Shed, "load"))));

        Assert.Equal(0.9, run.Battery("battery").ChargeEnd, 1e-6);
    }

    [Fact]
    public void Reclosing_OnceTheBusExceedsItsVoltage_SuppliesAgain()
    {
        var load = Amperes("load", "bus", 10, 9) with { Restart = Voltage.FromVolts(11), StartUp = Duration.FromSeconds(5) };
        var scenario = Bench(new() { OpensAbove = Current.FromAmperes(15), RecloseAbove = Voltage.FromVolts(13.5) }, load, Amperes("starter", "bus", 8) with { IsOn = false }) with
        {
            Alternators = [Alternator("alternator", "bus", 14, 10, 40) with { IsOn = false }],
        };

        var run = scenario.Run(Case(
            At(6, (ActionVerb.Connect, "starter")),
            At(7, (ActionVerb.Shed, "starter")),
            At(10, (ActionVerb.Connect, "alternator")),
            At(20, (ActionVerb.Shed, "alternator"))));

        Assert.Contains(run.Events, happened => happened.What == "battery closed again by its own protection" && Math.Abs(happened.Time.Minutes - 10) < 1e-6);
        Assert.True(run.Battery("battery").TimeToExhaustion.Minutes() > 60);
    }

    [Theory]
    [InlineData(-1, 0)]
    [InlineData(1, 5)]
    public void ChargeBlock_InTheCold_StopsChargeOnly(double celsius, double leastReceived)
    {
        var scenario = Bench(new() { NoChargeBelow = Temperature.FromCelsius(0) }, Amperes("load", "bus", 10));
        scenario = scenario with
        {
            Batteries = [scenario.Batteries[0] with { Temperature = Temperature.FromCelsius(celsius), InitialCharge = 0.5 }],
            Alternators = [Alternator("alternator", "bus", 14, 10, 40)],
        };

        var run = scenario.Run(Case(At(120, (ActionVerb.Fail, "alternator"))));

        Assert.InRange(run.Battery("battery").Received.AmpereHours, leastReceived, leastReceived > 0 ? 100 : 1e-9);
        Assert.Equal(120 + (leastReceived > 0 ? 60 : 30), run.Battery("battery").TimeToExhaustion.Minutes(), 0.5);
    }

    [Fact]
    public void ShortedCell_LowersVoltsAndOhmsByOneInN()
    {
        var scenario = Bench(null, Amperes("load", "bus", 10));
        scenario = scenario with { Batteries = [scenario.Batteries[0] with { Cells = 6 }] };

        var whole = scenario.Run().Bus("bus").StartVoltage.Volts;
        var one = scenario.Run(Case(At(0, (ActionVerb.ShortCell, "battery")))).Bus("bus").StartVoltage.Volts;
        var two = scenario.Run(Case(At(0, (ActionVerb.ShortCell, "battery"), (ActionVerb.ShortCell, "battery")))).Bus("bus").StartVoltage.Volts;

        Assert.Equal(13 - 0.2, whole, 1e-6);
        Assert.Equal(whole * 5 / 6, one, 1e-6);
        Assert.Equal(whole * 4 / 6, two, 1e-6);
    }

    [Fact]
    public void EveryCellShorted_IsADeadBusAndNotAFault()
    {
        var scenario = Bench(null, Amperes("load", "bus", 10, 9));
        scenario = scenario with { Batteries = [scenario.Batteries[0] with { Cells = 1 }] };

        var run = scenario.Run(Case(At(3, (ActionVerb.ShortCell, "battery"), (ActionVerb.ShortCell, "battery"))));

        Assert.Equal(3, run.Load("load").TimePowered.Minutes(), 1e-6);
        Assert.InRange(run.Bus("bus").LowestVoltage.Volts, 0, 0.2);
    }

    private static Scenario Bench(BatteryProtection? protection, params Load[] loads) => Scenario(horizonHours: 6) with
    {
        Buses = [Bus("bus")],
        Batteries = [Battery("battery", "bus", 10, 1, 1, Emf, Milliohms) with { Protection = protection }],
        Loads = [.. loads],
    };
}
