using Endurance.Numerics;
using Endurance.Simulation;
using Endurance.Tests.Simulation.Events;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation;

/// <summary>What a load draws by its law, its duty and its wire.</summary>
public sealed class DemandTests
{
    /// <summary>At half duty 60 W, 4 ohm and 6 A are 30 W, 8 ohm and 3 A; 12 V behind 10 mohm.</summary>
    [Theory]
    [InlineData("power", 2.505230)] // 30 W/11.974948 V, from (12 + sqrt(144 - 1.2))/2
    [InlineData("resistance", 1.498127)] // 12 V/8.01 ohm
    [InlineData("current", 3)]
    public void Duty_OfAHalf_HalvesWhatIsDrawn(string law, double amperes)
    {
        var load = law switch
        {
            "power" => Watts("load", "bus", 60),
            "resistance" => Ohms("load", "bus", 4),
            _ => Amperes("load", "bus", 6),
        };

        Assert.Equal(amperes, Ramp.Standing(12, load with { Duty = 0.5 }).Run().Battery("battery").StartCurrent.Amperes, 1e-6);
    }

    /// <summary>A minimum of 0.5 V says that the load still runs at the 0.85 V that 5 A leave of 0.9 V; without it the current falls from 1 V on.</summary>
    [Theory]
    [InlineData(0.5, 5)]
    [InlineData(null, 5 * 0.9 / 1.05)] // i = 5 v with v = 0.9 - 0.01 i
    public void ConstantCurrent_BelowOneVolt_IsDrawnDownToAMinimumThatIsLower(double? minimum, double amperes) =>
        Assert.Equal(amperes, Ramp.Standing(0.9, Amperes("load", "bus", 5, minimum)).For(0.1).Run().Battery("battery").StartCurrent.Amperes, 1e-6);

    /// <summary>11 V at the terminals behind 100 mohm: 1 A through 11 ohm wants 11.1 V at the bus and 11.11 V of EMF behind 10 mohm, 10 A want 12 V and 12.1 V.</summary>
    [Theory]
    [InlineData("resistance", 11.12, true)]
    [InlineData("resistance", 11.10, false)]
    [InlineData("current", 12.12, true)]
    [InlineData("current", 12.08, false)]
    public void Minimum_AtTheTerminalsBehindAWire_IsReachedAtAHigherBus(string law, double emf, bool powered)
    {
        var load = law == "current" ? Amperes("load", "bus", 10, 11) : Ohms("load", "bus", 11, 11);

        var run = Ramp.Standing(emf, load with { Wire = Wire(100) }).Run();

        Assert.Equal(powered ? null : LossReason.BelowMinimum, run.Load("load").LostBecause);
    }

    /// <summary>Under an EMF of 13 V falling to 10 V, 10 A through 100 mohm and the battery's 10 mohm: 11.5 V at the terminals are 12.6 V of EMF.</summary>
    [Fact]
    public void Minimum_BehindAWireUnderAFallingBus_IsCrossedAtItsMinute() =>
        Assert.Equal(60 * 0.4 / 3, Ramp.Falling(Amperes("load", "bus", 10, 11.5) with { Wire = Wire(100) }).Run().Load("load").TimePowered.Minutes(), 1e-4);
}
