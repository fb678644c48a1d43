using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Library;
using Endurance.Quantities;
using Xunit;

namespace Endurance.Tests.Components;

public class ForwardPointsTests
{
    private static readonly Temperature Warm = Temperature.FromCelsius(25);

    [Theory]
    [InlineData(SemiconductorKind.Schottky, 20e-6, 6)]
    [InlineData(SemiconductorKind.Schottky, 2e-3, 1)]
    [InlineData(SemiconductorKind.Silicon, 1e-9, 20)]
    [InlineData(SemiconductorKind.Silicon, 1e-12, 0.2)]
    public void Points_OfAKnownDiode_GiveItsParametersBack(SemiconductorKind kind, double saturation, double milliohms)
    {
        var diode = Diode(kind, saturation, DiodeDefaults.For(kind).Ideality, milliohms);
        foreach (var amperes in (double[][])[[1, 15], [0.1, 1, 5, 20]])
        {
            var fit = ForwardPoints.Fit(PointsOf(diode, amperes), diode.Ideality, Warm)!;

            Assert.Equal(1, fit.SaturationCurrent.Amperes / saturation, 6);
            Assert.Equal(1, fit.SeriesResistance.Milliohms / milliohms, 6);
            Assert.Equal(diode.Ideality, fit.Ideality, 12);
            Assert.InRange(fit.WorstMiss.Volts, 0, 1e-10);
        }
    }

    [Fact]
    public void Points_FlatterThanTheKind_HoldTheResistanceAndFitTheIdeality()
    {
        var diode = Diode(SemiconductorKind.Silicon, 1e-8, 1.2, ForwardPoints.LeastSeriesResistance.Milliohms);

        var fit = ForwardPoints.Fit(PointsOf(diode, 1, 10), DiodeDefaults.Silicon.Ideality, Warm)!;

        Assert.Equal(1.2, fit.Ideality, 6);
        Assert.Equal(0.1, fit.SeriesResistance.Milliohms, 9);
        Assert.InRange(fit.WorstMiss.Volts, 0, 1e-10);
    }

    [Fact]
    public void Points_OffAnyCurve_ReportTheirMiss()
    {
        var points = PointsOf(Diode(SemiconductorKind.Schottky, 20e-6, 1.05, 6), 1, 5, 15).SetItem(1, new ForwardPoint(Current.FromAmperes(5), Voltage.FromVolts(0.6)));

        var fit = ForwardPoints.Fit(points, 1.05, Warm)!;

        Assert.InRange(fit.WorstMiss.Volts, 0.05, 0.3);
    }

    [Fact]
    public void Points_Fewer_ThanTwo_AreRefused() =>
        Assert.Throws<ArgumentException>(() => ForwardPoints.Fit([new ForwardPoint(Current.FromAmperes(1), Voltage.FromVolts(0.4))], 1.05, Warm));

    private static ImmutableArray<ForwardPoint> PointsOf(JunctionDiode diode, params double[] amperes) =>
        [.. amperes.Select(Current.FromAmperes).Select(current => new ForwardPoint(current, diode.ForwardVoltageAt(current, Warm)))];

    private static JunctionDiode Diode(SemiconductorKind kind, double saturation, double ideality, double milliohms) => new()
    {
        Kind = kind,
        SaturationCurrent = Current.FromAmperes(saturation),
        Ideality = ideality,
        SeriesResistance = Resistance.FromMilliohms(milliohms),
        Temperature = Warm,
        EnergyGap = DiodeDefaults.For(kind).EnergyGap,
        SaturationExponent = DiodeDefaults.For(kind).SaturationExponent,
    };
}
