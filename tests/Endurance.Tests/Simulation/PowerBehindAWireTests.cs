using Endurance.Numerics;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Tests.Simulation.Events;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation;

/// <summary>
/// A constant power P behind a wire R has the terminals at (v + s)/2 with s^2 = v^2 - 4PR under a bus of v, and none below v = 2 sqrt(PR).
/// 240 W behind 60 mohm: 11.3 V under 12.6 V, 3.79 V at the least, under 7.59 V.
/// </summary>
public sealed class PowerBehindAWireTests
{
    /// <summary>Its minimum is far below what it has; the bus that one works back to from it, 60 mohm x 240 W/1 V above, has nothing to do with it.</summary>
    [Theory]
    [InlineData(null)]
    [InlineData(1.0)]
    [InlineData(3.7)]
    [InlineData(11.0)]
    public void Load_AboveItsMinimumAtItsTerminals_IsPowered(double? minimum)
    {
        var run = Ramp.Standing(12.6, Heater(minimum)).Run();

        Assert.Null(run.Load("heater").TimePowered);
        Assert.Equal(240 / ((12.6 + Math.Sqrt((12.6 * 12.6) - (4 * 240 * 0.07))) / 2), run.Battery("battery").StartCurrent.Amperes, 1e-6); // 10 mohm more in the battery
    }

    [Fact]
    public void Load_BelowItsMinimumAtItsTerminals_IsLost()
    {
        var run = Ramp.Standing(12.6, Heater(11.3)).Run(); // 12.6 V less 20 to 21 A through 70 mohm leave 11.1 V

        Assert.Equal(LossReason.BelowMinimum, run.Load("heater").LostBecause);
    }

    /// <summary>EMF 12 V falling to 6 V over 10 Ah, behind next to nothing: it collapses where the bus is at 2 sqrt(PR).</summary>
    [Fact]
    public void Load_WhoseMinimumIsBelowTheLeastItCanHave_CollapsesThere()
    {
        var scenario = Ramp.Standing(12, Heater(2)) with
        {
            Batteries = [Battery("battery", "bus", 10, 20, 1, Table((0, 6), (100, 12)), PiecewiseLinear.Constant(1e-3))],
        };

        var run = scenario.Run();

        Assert.Equal(LossReason.VoltageCollapse, run.Load("heater").LostBecause);
        Assert.Equal(((2 * Math.Sqrt(240 * 0.06)) - 6) / 6, run.Battery("battery").ChargeEnd, 1e-3);
    }

    private static Endurance.Components.Load Heater(double? minimum) => Watts("heater", "bus", 240, minimum) with { Wire = Wire(60) };
}
