using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reference;

/// <summary>Discharge tables of data sheets, typed as points, must come back out of the simulation.</summary>
[Trait("Kind", "Validation")]
public sealed class DataSheets
{
    /// <summary>EMF of a 12 V lead-acid battery for these tests: rest voltages of discoverbattery.com, table 6 (80 degF), with the flat end drawn down to where a slow discharge ends.</summary>
    private static readonly PiecewiseLinear Emf = Table((0, 10.6), (5, 11.5), (25, 12.06), (50, 12.24), (75, 12.45), (100, 12.65));

    /// <summary>A maker's sheet of a 12 V 7.5 Ah VRLA battery (fdocuments.net copy, MH47929): amperes to 1.75 V a cell, 20 mohm.</summary>
    public static TheoryData<double, double> SevenAmpereHours => new()
    {
        { 5, 21.6 }, { 10, 15.4 }, { 15, 12.0 }, { 30, 7.44 }, { 60, 4.42 }, { 120, 2.52 }, { 180, 1.91 }, { 300, 1.28 }, { 480, 0.874 }, { 600, 0.716 }, { 1200, 0.379 },
    };

    /// <summary>A maker's sheet of a 12 V 14 Ah VRLA battery (datasheetandpdf.com copy): amperes to 10.50 V, 13.5 mohm; the 30-minute entry is out of line with its neighbours and left out.</summary>
    public static TheoryData<double, double> FourteenAmpereHours => new()
    {
        { 5, 42.1 }, { 10, 29.5 }, { 15, 21.0 }, { 60, 7.63 }, { 120, 4.6 }, { 180, 3.4 }, { 240, 2.66 }, { 300, 2.40 }, { 480, 1.60 },
    };

    [Theory]
    [MemberData(nameof(SevenAmpereHours))]
    public void SevenAmpereHours_EachCurrentOfTheSheet_ReturnsItsMinutes(double minutes, double amperes) =>
        Assert.Equal(minutes, MinutesTo(10.5, amperes, Points(SevenAmpereHours), 20), minutes * 0.001);

    [Theory]
    [MemberData(nameof(FourteenAmpereHours))]
    public void FourteenAmpereHours_EachCurrentOfTheSheet_ReturnsItsMinutes(double minutes, double amperes) =>
        Assert.Equal(minutes, MinutesTo(10.5, amperes, Points(FourteenAmpereHours), 13.5), minutes * 0.001);

    [Fact]
    public void PowerPoint_ReturnsItsMinutes()
    {
        ImmutableArray<DischargePoint> points =
        [
            new() { Power = Power.FromWatts(210), Lasts = Duration.FromMinutes(12), EndVoltage = Voltage.FromVolts(9.6) },
            new() { Power = Power.FromWatts(50), Lasts = Duration.FromMinutes(75), EndVoltage = Voltage.FromVolts(10.2) },
            new() { Current = Current.FromAmperes(0.38), Lasts = Duration.FromHours(20), EndVoltage = Voltage.FromVolts(10.5) },
        ];
        var battery = WithPoints(points, 20);
        var scenario = Scenario() with { Batteries = [battery] };

        var high = scenario with { Buses = [Bus("bus", 9.6)], Loads = [Watts("load", "bus", 210)] };
        var low = scenario with { Buses = [Bus("bus", 10.2)], Loads = [Watts("load", "bus", 50)] };

        Assert.Equal(12, high.Run().Bus("bus").TimeToCutoff.Minutes(), 12 * 0.001);
        Assert.Equal(75, low.Run().Bus("bus").TimeToCutoff.Minutes(), 75 * 0.001);
    }

    private static double MinutesTo(double volts, double amperes, ImmutableArray<DischargePoint> points, double milliohms)
    {
        var scenario = Scenario(horizonHours: 30) with
        {
            Buses = [Bus("bus", volts)],
            Batteries = [WithPoints(points, milliohms)],
            Loads = [Amperes("load", "bus", amperes)],
        };
        return scenario.Run().Bus("bus").TimeToCutoff.Minutes();
    }

    private static Battery WithPoints(ImmutableArray<DischargePoint> points, double milliohms)
    {
        var curve = LifetimeCurve.Through(points, Emf, PiecewiseLinear.Constant(milliohms / 1000));
        return Battery("battery", "bus", curve.LowestCurrentCapacity.AmpereHours, curve.Points[0].Lifetime.Hours, 1, Emf, PiecewiseLinear.Constant(milliohms)) with
        {
            Lifetimes = curve,
        };
    }

    private static ImmutableArray<DischargePoint> Points(TheoryData<double, double> rows) =>
    [
        .. rows.Select(row => new DischargePoint
        {
            Current = Current.FromAmperes((double)row[1]),
            Lasts = Duration.FromMinutes((double)row[0]),
            EndVoltage = Voltage.FromVolts(10.5),
        }),
    ];
}
