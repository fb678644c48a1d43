using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reference;

/// <summary>The two-well model against published lifetimes and fits.</summary>
[Trait("Kind", "Validation")]
public sealed class BatteryModels
{
    /// <summary>From memory, unverified: Jongerden, Haverkort, Bohnenkamp, Katoen, "Maximizing system lifetime by battery scheduling" (DSN 2009), c = 0.166, k' = 0.122 /min.</summary>
    [Theory]
    [InlineData("250", 5.5, 4.53)]
    [InlineData("250", 11, 12.16)]
    [InlineData("500", 5.5, 2.02)]
    [InlineData("500", 11, 4.53)]
    [InlineData("500,250", 5.5, 2.58)]
    [InlineData("500,250", 11, 6.45)]
    [InlineData("250,0", 5.5, 10.80)]
    [InlineData("250,0", 11, 44.78)]
    [InlineData("500,0", 5.5, 4.30)]
    [InlineData("500,0", 11, 10.80)]
    [InlineData("500,0,250,0", 5.5, 4.80)]
    [InlineData("500,0,250,0", 11, 16.93)]
    [InlineData("250,0,0", 5.5, 21.86)]
    [InlineData("250,0,0", 11, 84.90)]
    [InlineData("500,0,0", 5.5, 6.53)]
    [InlineData("500,0,0", 11, 21.86)]
    public void TwoWells_LoadPattern_LastsAsRemembered(string milliamperesByMinute, double ampereMinutes, double minutes)
    {
        var pattern = milliamperesByMinute.Split(',').Select(text => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture) / 1000).ToArray();
        var levels = pattern.Where(level => level > 0).Distinct().ToArray();
        var steps = Enumerable.Range(0, 120).Select(minute => At(minute, [.. levels.Select(level =>
            (pattern[minute % pattern.Length] == level ? ActionVerb.Connect : ActionVerb.Shed, Name(level)))]));
        var scenario = Scenario() with
        {
            Buses = [Bus("bus")],
            Batteries =
            [
                Battery("battery", "bus", 1, 1, 1, PiecewiseLinear.Constant(4), PiecewiseLinear.Constant(0.001)) with
                {
                    CapacityModel = CapacityModel.Kinetic,
                    TypedWells = new KineticWells { Available = 0.166, RatePerHour = 0.122 * 60, Capacity = Charge.FromAmpereHours(ampereMinutes / 60) },
                },
            ],
            Loads = [.. levels.Select(level => Amperes(Name(level), "bus", level))],
        };

        var run = scenario.Run(Case([.. steps]));

        Assert.Equal(minutes, run.Battery("battery").TimeToExhaustion.Minutes(), 0.006);
        static string Name(double level) => FormattableString.Invariant($"load_{level * 1000}");
    }

    /// <summary>NREL System Advisor Model library, test lib_battery_capacity_test.cpp at e97a19f8: q20 = 100, q10 = 93, q1 = 60 Ah give q_max 108.16 Ah; c and k' follow from the same formula.</summary>
    [Fact]
    public void Wells_ThroughThreeCapacities_AreThePublishedOnes()
    {
        var wells = KineticWells.Through(
            (Duration.FromHours(20), Charge.FromAmpereHours(100)), (Duration.FromHours(10), Charge.FromAmpereHours(93)), (Duration.FromHours(1), Charge.FromAmpereHours(60)))!;

        Assert.Equal(108.16, wells.Capacity.AmpereHours, 0.01);
        Assert.Equal(0.677, wells.RatePerHour, 0.001);
        Assert.Equal(0.4751, wells.Available, 0.001);
        Assert.Equal(60, wells.CapacityIn(Duration.FromHours(1)).AmpereHours, 0.001);
        Assert.Equal(93, wells.CapacityIn(Duration.FromHours(10)).AmpereHours, 0.001);
    }

    /// <summary>16 Ah at 20 h, k 1.2: 30 A for 10 min, then 5 A. By the Peukert sum (1 - 10/15.50) x 133.1 min; by the exact steps of Manwell and McGowan (1993), computed apart, with the wells through 20, 5 and 1 h (49.02 %, 0.4731 /h, 17.759 Ah).</summary>
    [Theory]
    [InlineData(CapacityModel.Peukert, 47.226)]
    [InlineData(CapacityModel.Kinetic, 64.451)]
    public void FallingCurrent_LastsLongerByTheKineticModel(CapacityModel model, double furtherMinutes)
    {
        var scenario = Scenario() with
        {
            Buses = [Bus("bus")],
            Batteries = [Battery("battery", "bus", 16, 20, 1.2, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(1)) with { CapacityModel = model }],
            Loads = [Amperes("high", "bus", 25), Amperes("low", "bus", 5)],
        };

        var run = scenario.Run(Case(At(10, (ActionVerb.Shed, "high"))));

        Assert.Equal(10 + furtherMinutes, run.Battery("battery").TimeToExhaustion.Minutes(), 0.005);
    }
}
