using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Components;

public sealed class LifetimeCurveTests
{
    private static readonly PiecewiseLinear Emf = Table((0, 10), (100, 13));
    private static readonly PiecewiseLinear Ohms = PiecewiseLinear.Constant(0.02);

    private static readonly LifetimeCurve Curve = Of((1, 20), (4, 4), (16, 0.5));

    [Theory]
    [InlineData(1, 20)]
    [InlineData(4, 4)]
    [InlineData(16, 0.5)]
    public void At_ACurrentOfThePoints_IsItsLifetime(double amperes, double hours) => Assert.Equal(hours, Hours(Curve, amperes), 1e-9);

    /// <summary>Straight in log-log: at the geometric mean of two currents stands the geometric mean of their lifetimes.</summary>
    [Theory]
    [InlineData(2, 20, 4)]
    [InlineData(8, 4, 0.5)]
    public void At_TheGeometricMeanOfTwoCurrents_IsThatOfTheirLifetimes(double amperes, double before, double after) =>
        Assert.Equal(Math.Sqrt(before * after), Hours(Curve, amperes), 1e-9);

    /// <summary>20 Ah at 1 A are 20 Ah at any lower current.</summary>
    [Theory]
    [InlineData(0.5, 40)]
    [InlineData(0.1, 200)]
    public void At_BelowTheLowestCurrent_DeliversNoMoreThanThere(double amperes, double hours) => Assert.Equal(hours, Hours(Curve, amperes), 1e-9);

    /// <summary>The last span takes its lifetimes from 4 h to 0.5 h over a factor of four; the next four divide by eight again.</summary>
    [Fact]
    public void At_AboveTheHighestCurrent_GoesOnAsTheLastSpan() => Assert.Equal(0.0625, Hours(Curve, 64), 1e-9);

    [Theory]
    [InlineData(1, 8)]
    [InlineData(2, 4)]
    [InlineData(4, 2)]
    public void At_OfASinglePoint_DeliversItsChargeAtAnyCurrent(double amperes, double hours) => Assert.Equal(hours, Hours(Of((2, 4)), amperes), 1e-9);

    [Fact]
    public void ExponentOf_ASpan_IsThatOfPeukert()
    {
        Assert.Equal(Math.Log(5) / Math.Log(4), Curve.ExponentOf(1), 1e-12);
        Assert.Equal(1.5, Curve.ExponentOf(2), 1e-12);
    }

    [Fact]
    public void LeastSpacing_UnevenCurrents_IsTheSmallestRatio()
    {
        Assert.Equal(1.25, Of((1, 20), (4, 4), (5, 3), (10, 1)).LeastSpacing, 1e-12);
        Assert.Equal(double.PositiveInfinity, Of((2, 4)).LeastSpacing);
    }

    [Fact]
    public void Curves_OfTheSamePoints_AreEqual()
    {
        var same = Of((1, 20), (4, 4), (16, 0.5));

        Assert.Equal(Curve, same);
        Assert.Equal(Curve.GetHashCode(), same.GetHashCode());
        Assert.NotEqual(Curve, Of((1, 20), (4, 4), (16, 0.4)));
        Assert.NotEqual(Curve, Of((1, 20), (4, 4)));
        Assert.False(Curve.Equals(null));
    }

    /// <summary>EMF 10 + 3 z behind 20 mohm at 10 A is 11.2 V where 3 z = 1.4; at 9 V and 10 A it is never there, at 13 V it is below from the start.</summary>
    [Theory]
    [InlineData(10, 11.2, 1.4 / 3)]
    [InlineData(10, 9, 0)]
    [InlineData(10, 13, 1)]
    [InlineData(10, 12.8, 1)]
    [InlineData(10, 9.8, 0)]
    public void ChargeAtEnd_StraightEmf_IsWhereTheTerminalVoltageStandsThere(double amperes, double volts, double charge) =>
        Assert.Equal(charge, LifetimeCurve.ChargeAtEnd(Current.FromAmperes(amperes), Voltage.FromVolts(volts), Emf, Ohms), 1e-9);

    /// <summary>12 V behind 20 mohm down to half charge, then behind 120 mohm at none: at 20 A 10.8 V stand where R is 60 mohm, z = 0.3.</summary>
    [Fact]
    public void ChargeAtEnd_ResistanceThatRisesTowardsTheEnd_IsFoundOnItsOwnKnots() =>
        Assert.Equal(0.3, LifetimeCurve.ChargeAtEnd(
            Current.FromAmperes(20), Voltage.FromVolts(10.8), PiecewiseLinear.Constant(12), Table((0, 0.12), (50, 0.02), (100, 0.02))), 1e-9);

    /// <summary>A resistance that is highest at three quarters pulls the voltage down there: the discharge ends there and never sees the rest.</summary>
    [Fact]
    public void ChargeAtEnd_VoltageThatWouldComeBack_EndsAtTheFirstFall() =>
        Assert.Equal(0.875, LifetimeCurve.ChargeAtEnd(
            Current.FromAmperes(10), Voltage.FromVolts(11.5), PiecewiseLinear.Constant(12), Table((0, 0), (50, 0), (75, 0.1), (100, 0))), 1e-9);

    /// <summary>A test that ends at 11.2 V, 10 A, used 1 - 1.4/3 of the charge: 32 min there are 60 min to exhaustion.</summary>
    [Fact]
    public void Through_ACurrentPoint_CountsTheChargeLeftAtItsEnd() =>
        Assert.Equal(60, LifetimeCurve.Through([AtAmperes(10, 32, 11.2)], Emf, Ohms).At(Current.FromAmperes(10)).Minutes, 1e-6);

    [Fact]
    public void Through_PointsInAnyOrder_StandByRisingCurrent()
    {
        var curve = LifetimeCurve.Through([AtAmperes(20, 12, 10), AtAmperes(5, 100, 10), AtAmperes(10, 40, 10)], Emf, Ohms);

        Assert.Equal([5, 10, 20], curve.Points.Select(point => point.Current.Amperes));
        Assert.Equal(5, curve.Lowest.Amperes);
        Assert.Equal(20, curve.Highest.Amperes);
    }

    /// <summary>12 V behind 20 mohm gives 119.2 W at exactly 10.1 A and 11.798 V, from full to empty: a constant EMF makes a constant power a constant current.</summary>
    [Fact]
    public void Through_APowerPointOfASteadyVoltage_IsTheCurrentPointOfThatPower()
    {
        const double watts = 10.1 * (12 - (10.1 * 0.02));

        var curve = LifetimeCurve.Through([AtWatts(watts, 50, 10), AtAmperes(1, 900, 10)], PiecewiseLinear.Constant(12), Ohms);

        Assert.Equal(10.1, curve.Highest.Amperes, 1e-6);
        Assert.Equal(50, curve.At(curve.Highest).Minutes, 1e-3);
    }

    /// <summary>
    /// Without resistance and with one point the charge is the same at every current: dz/dt = -P/(E(z) Q) from z = 1 to an end voltage, so
    /// t = Q (E(1)^2 - E(end)^2)/(2 P dE/dz). With 13 V to 11.5 V, 3 V over the charge, 100 W and 30 min: Q = 30 min x 600 VW/36.75 V^2 = 8.163 Ah.
    /// </summary>
    [Fact]
    public void Through_APowerPointOfAFallingVoltage_DeliversTheIntegratedCharge()
    {
        var curve = LifetimeCurve.Through([AtWatts(100, 30, 11.5)], Emf, PiecewiseLinear.Constant(1e-9));

        Assert.Equal(0.5 * 2 * 100 * 3 / ((13 * 13) - (11.5 * 11.5)), curve.LowestCurrentCapacity.AmpereHours, 1e-4);
    }

    /// <summary>(10 + 3 z)^2 = 4 R P ends 350 W behind 100 mohm at z = 0.61 and 5.9 V, long before 3 V: the test ended in a collapse, and so does its simulation.</summary>
    [Fact]
    public void Through_APowerPointThatEndsInCollapse_CollapsesAtItsMinutes()
    {
        var ohms = PiecewiseLinear.Constant(0.1);
        var curve = LifetimeCurve.Through([AtWatts(350, 6, 3), AtAmperes(1, 900, 10)], Emf, ohms);
        var scenario = Scenario() with
        {
            Buses = [Bus("bus")],
            Batteries = [Battery("battery", "bus", 15, 15, 1, Emf, PiecewiseLinear.Constant(100)) with { Lifetimes = curve }],
            Loads = [Watts("load", "bus", 350)],
        };

        var load = scenario.Run().Load("load");

        Assert.Equal(LossReason.VoltageCollapse, load.LostBecause);
        Assert.Equal(6, load.TimePowered.Minutes(), 0.006);
    }

    private static double Hours(LifetimeCurve curve, double amperes) => curve.At(Current.FromAmperes(amperes)).Hours;

    private static LifetimeCurve Of(params (double Amperes, double Hours)[] points) =>
        new() { Points = [.. points.Select(point => (Current.FromAmperes(point.Amperes), Duration.FromHours(point.Hours)))] };

    private static DischargePoint AtAmperes(double amperes, double minutes, double end) =>
        new() { Current = Current.FromAmperes(amperes), Lasts = Duration.FromMinutes(minutes), EndVoltage = Voltage.FromVolts(end) };

    private static DischargePoint AtWatts(double watts, double minutes, double end) =>
        new() { Power = Power.FromWatts(watts), Lasts = Duration.FromMinutes(minutes), EndVoltage = Voltage.FromVolts(end) };
}
