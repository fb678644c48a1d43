using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reference;

/// <summary>
/// Four networks solved by an independent program (network to 1e-12 V, state by an 8th-order Runge-Kutta method at a relative
/// tolerance of 1e-10) and again by two other general-purpose engines, which agree to better than 1e-5.
/// </summary>
[Trait("Kind", "Validation")]
public sealed class IndependentNetworks
{
    private const double Minutes = 0.005;
    private const double Volts = 0.001;

    [Fact]
    public void OneBattery_ConstantCurrent_LastsAsSolvedIndependently()
    {
        var run = ReferenceNetworks.OneBatteryConstantCurrent.Run();

        Assert.Equal(75.7149, run.Battery("battery").TimeToExhaustion.Minutes(), Minutes);
    }

    [Fact]
    public void OneBattery_ConstantPower_LastsAsSolvedIndependently()
    {
        var run = ReferenceNetworks.OneBatteryConstantPower.Run();

        Assert.Equal(12.5821, run.Bus("bus").StartVoltage.Volts, Volts);
        Assert.Equal(6.35825, run.Battery("battery").StartCurrent.Amperes, 1e-4);
        Assert.Equal(65.7841, run.Bus("bus").TimeToCutoff.Minutes(), Minutes);
    }

    [Fact]
    public void TwoBatteries_ThroughTwoDiodes_LastAsSolvedIndependently()
    {
        var run = ReferenceNetworks.TwoBatteriesTwoDiodes.Run();
        var atCutoff = (ReferenceNetworks.TwoBatteriesTwoDiodes with { Horizon = Endurance.Quantities.Duration.FromMinutes(116.868) }).Run();

        Assert.Equal(12.3581, run.Bus("bus").StartVoltage.Volts, Volts);
        Assert.Equal(7.44530, run.Feed("d1").StartCurrent.Amperes, 1e-4);
        Assert.Equal(0.115559, run.Feed("d2").StartCurrent.Amperes, 1e-4);
        Assert.Equal(116.868, run.Bus("bus").TimeToCutoff.Minutes(), Minutes);
        Assert.Equal(0.02173, atCutoff.Battery("b1").ChargeEnd, 1e-4);
        Assert.Equal(0.08855, atCutoff.Battery("b2").ChargeEnd, 1e-4);
    }

    [Fact]
    public void TwoBatteries_ThroughTwoDiodes_HeatTheDiodesAsSolvedIndependently()
    {
        // The horizon ends the run just after the start, so that the highest watts are those of the start.
        var start = (ReferenceNetworks.TwoBatteriesTwoDiodes with { Horizon = Endurance.Quantities.Duration.FromSeconds(0.001) }).Run();

        Assert.Equal(2.92631, start.Feed("d1").HighestDiodePower!.Value.Watts, 1e-4);
        Assert.Equal(0.0272648, start.Feed("d2").HighestDiodePower!.Value.Watts, 1e-5);
    }

    [Fact]
    public void MainAndEssential_AlternatorFails_LastAsSolvedIndependently()
    {
        var run = ReferenceNetworks.MainAndEssential.Run(ReferenceNetworks.AlternatorFails);

        Assert.Equal(12.6212, run.Bus("main").StartVoltage.Volts, Volts);
        Assert.Equal(12.2280, run.Bus("essential").StartVoltage.Volts, Volts);
        Assert.Equal(4.75153, run.Feed("normal").StartCurrent.Amperes, 1e-4);
        Assert.Equal(1.24505, run.Feed("backup_feed").StartCurrent.Amperes, 1e-4);
        Assert.Equal(60.4339, run.Bus("main").TimeToCutoff.Minutes(), Minutes);
        Assert.Equal(63.3127, run.Battery("main_battery").TimeToExhaustion.Minutes(), Minutes);
        Assert.Equal(118.424, run.Bus("essential").TimeToCutoff.Minutes(), Minutes);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Network_HalvedTolerance_MovesNoMinuteByAHundredth(Scenario scenario, FailureCase failureCase)
    {
        var options = new SimulationOptions();
        var coarse = scenario.Run(failureCase, options);
        var fine = scenario.Run(failureCase, options with { Tolerance = options.Tolerance / 2 });

        foreach (var (a, b) in coarse.Buses.Zip(fine.Buses))
            Assert.Equal(a.TimeToCutoff.Minutes(), b.TimeToCutoff.Minutes(), 0.001);
        foreach (var (a, b) in coarse.Loads.Zip(fine.Loads))
            Assert.Equal(a.TimePowered.Minutes(), b.TimePowered.Minutes(), 0.001);
        Assert.Equal(0, coarse.EnergyResidual, 1e-9);
    }

    public static TheoryData<Scenario, FailureCase> All => new()
    {
        { ReferenceNetworks.OneBatteryConstantCurrent, Case() },
        { ReferenceNetworks.OneBatteryConstantPower, Case() },
        { ReferenceNetworks.TwoBatteriesTwoDiodes, Case() },
        { ReferenceNetworks.MainAndEssential, ReferenceNetworks.AlternatorFails },
    };
}
