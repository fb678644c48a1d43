using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reference;

/// <summary>The two-well model in steps: NREL System Advisor Model library, test lib_battery_capacity_test.cpp at e97a19f8.</summary>
[Trait("Kind", "Validation")]
public sealed class KineticSteps
{
    private static readonly KineticWells Wells = KineticWells.Through(
        (Duration.FromHours(20), Charge.FromAmpereHours(100)), (Duration.FromHours(10), Charge.FromAmpereHours(93)), (Duration.FromHours(1), Charge.FromAmpereHours(60)))!;

    /// <summary>Minutes at constant amperes from full, computed from the exact step of Manwell and McGowan (1993) apart from this program.</summary>
    [Theory]
    [InlineData(10, 551.24)]
    [InlineData(20, 233.58)]
    [InlineData(40, 97.07)]
    [InlineData(60, 60.00)]
    [InlineData(100, 33.83)]
    [InlineData(150, 21.86)]
    public void ConstantCurrent_FromFull_LastsAsComputed(double amperes, double minutes)
    {
        Assert.Equal(minutes, Wells.LifetimeAt(Current.FromAmperes(amperes)).Minutes, 0.05);
        Assert.Equal(minutes, Bench(1, Amperes("load", "bus", amperes)).Run().Battery("battery").TimeToExhaustion.Minutes(), 0.05);
    }

    /// <summary>From 50 % (54.08 Ah): 1.5 A for an hour leaves 48.613 %, then 3 A for an hour 45.839 %.</summary>
    [Fact]
    public void Discharge_FromHalf_LeavesThePublishedCharge()
    {
        var scenario = Bench(0.5, Amperes("first", "bus", 1.5), Amperes("second", "bus", 3) with { IsOn = false });
        var steps = Case(At(60, (ActionVerb.Shed, "first"), (ActionVerb.Connect, "second")), At(120, (ActionVerb.Shed, "second")));

        Assert.Equal(0.48613, (scenario with { Horizon = Duration.FromHours(1) }).Run(steps).Battery("battery").ChargeEnd, 1e-4);
        Assert.Equal(0.45839, (scenario with { Horizon = Duration.FromHours(2) }).Run(steps).Battery("battery").ChargeEnd, 1e-4);
    }

    /// <summary>From 50 %: 30 A for an hour leaves 24.07 Ah (22.26 %), and 30 A of charge for an hour brings back 54.07 Ah (50 %).</summary>
    [Fact]
    public void ThirtyAmperes_OutAndInAgain_BringBackTheCharge()
    {
        var scenario = Bench(0.5, Amperes("load", "bus", 30)) with
        {
            Alternators = [Alternator("alternator", "bus", 16, 1, 30) with { IsOn = false }],
        };
        var steps = Case(At(60, (ActionVerb.Shed, "load"), (ActionVerb.Connect, "alternator")));

        Assert.Equal(0.2226, (scenario with { Horizon = Duration.FromHours(1) }).Run(steps).Battery("battery").ChargeEnd, 1e-4);
        Assert.Equal(0.5, (scenario with { Horizon = Duration.FromHours(2) }).Run(steps).Battery("battery").ChargeEnd, 1e-4);
    }

    private static Scenario Bench(double charge, params Load[] loads) => Scenario(horizonHours: 30) with
    {
        Buses = [Bus("bus")],
        Batteries =
        [
            Battery("battery", "bus", 100, 20, 1.2, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(0.01)) with
            {
                CapacityModel = CapacityModel.Kinetic,
                TypedWells = Wells,
                InitialCharge = charge,
            },
        ],
        Loads = [.. loads],
    };
}
