using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Library;

/// <summary>Diodes by class, for scenarios that know no more than the kind and the size.</summary>
public static class DiodeTable
{
    private const string ModelLibrary = "an open model library";

    private static readonly Temperature ParametersAt = Temperature.FromKelvin(300.15);

    /// <summary>Small ones first.</summary>
    public static ImmutableArray<DiodeClass> Rows { get; } =
    [
        new()
        {
            Name = "silicon_3a",
            Title = "small silicon rectifier, 3 A",
            Diode = ThroughLimit(1.0, 3, 20),
            Rated = Current.FromAmperes(3),
            Source = "1N5400 to 1N5408 class: greatest drop 1.0 V at 3 A by data sheet; ideality 1.8 and series resistance 20 mohm from memory, unverified",
        },
        new()
        {
            Name = "silicon_12a",
            Title = "silicon stud rectifier, 12 A",
            Diode = Silicon(1.71e-8, 1.7, 3.5),
            Rated = Current.FromAmperes(12),
            Source = $"1N1206A class: Is 17.1 nA, n 1.7, Rs 3.5 mohm; {ModelLibrary}",
        },
        new()
        {
            Name = "bridge_leg",
            Title = "one leg of a 25 A silicon bridge, from an AC terminal to plus",
            Diode = ThroughLimit(1.1, 12.5, 10),
            Rated = Current.FromAmperes(12.5),
            MaximumJunction = Temperature.FromCelsius(150),
            HeatPath = 1.9,
            HeatPathTo = "case",
            Source = "GBPC25 class: greatest drop 1.1 V a leg at 12.5 A, 150 degC, 1.9 K/W to the case by data sheet 88612; ideality 1.8 and series resistance 10 mohm from memory, unverified",
        },
        new()
        {
            Name = "bridge_two_legs",
            Title = "two legs of a 25 A silicon bridge in series, from minus to plus",
            Diode = InSeries(ThroughLimit(1.1, 12.5, 10)),
            Rated = Current.FromAmperes(12.5),
            MaximumJunction = Temperature.FromCelsius(150),
            HeatPath = 1.9,
            HeatPathTo = "case",
            Source = "GBPC25 class, twice the drop of bridge_leg; ideality 1.8 and series resistance 10 mohm a leg from memory, unverified",
        },
        new()
        {
            Name = "schottky_3a",
            Title = "Schottky, 3 A",
            Diode = Schottky(2.5069e-6, 1.0281, 11.15, 0.69, 2),
            Rated = Current.FromAmperes(3),
            MaximumJunction = Temperature.FromCelsius(125),
            HeatPath = 40,
            HeatPathTo = "ambient",
            Source = $"1N5822 class: Is 2.5069 uA, n 1.0281, Rs 11.15 mohm, Eg 0.69 eV, xti 2; {ModelLibrary}. 125 degC and 40 K/W by data sheet DS23003",
        },
        new()
        {
            Name = "schottky_8a",
            Title = "Schottky, 8 A",
            Diode = Schottky(6.503e-5, 1.33205, 11.99, 0.6, 3.094),
            Rated = Current.FromAmperes(8),
            Source = $"MBR845 class: Is 65.03 uA, n 1.33205, Rs 11.99 mohm, Eg 0.6 eV, xti 3.094; {ModelLibrary}",
        },
        new()
        {
            Name = "schottky_15a",
            Title = "dual Schottky, 2 x 7.5 A, both legs joined",
            Diode = DualSchottky(),
            Rated = Current.FromAmperes(15),
            MaximumJunction = Temperature.FromCelsius(150),
            HeatPath = 3,
            HeatPathTo = "case, a leg",
            Source = "MBR1545CT class: greatest drops a leg at 125 degC, 0.57 V at 7.5 A and 0.72 V at 15 A, 150 degC, 3.0 K/W by data sheet PD-2.318; ideality 1.05, Eg 0.69 eV, xti 2 from memory, unverified",
        },
        new()
        {
            Name = "ideal_controller_7a",
            Title = "ideal-diode controller with its transistor, 7 A",
            Diode = new IdealDiodeController { OnResistance = Resistance.FromMilliohms(15), RegulatedDrop = Voltage.FromVolts(0.020) },
            Rated = Current.FromAmperes(7),
            Source = "regulated drop 20 mV by a controller's product page (LM74700 class); 15 mohm for an integrated 7 A part by a trade journal",
        },
    ];

    /// <summary><see langword="null"/> when there is no class of that name.</summary>
    public static DiodeClass? Find(string name) => Rows.FirstOrDefault(row => string.Equals(row.Name, name, StringComparison.Ordinal));

    private static JunctionDiode Silicon(double amperes, double ideality, double milliohms) =>
        Junction(SemiconductorKind.Silicon, amperes, ideality, milliohms, DiodeDefaults.Silicon.EnergyGap, DiodeDefaults.Silicon.SaturationExponent);

    private static JunctionDiode Schottky(double amperes, double ideality, double milliohms, double gap, double exponent) =>
        Junction(SemiconductorKind.Schottky, amperes, ideality, milliohms, gap, exponent);

    private static JunctionDiode Junction(SemiconductorKind kind, double amperes, double ideality, double milliohms, double gap, double exponent) => new()
    {
        Kind = kind,
        SaturationCurrent = Current.FromAmperes(amperes),
        Ideality = ideality,
        SeriesResistance = Resistance.FromMilliohms(milliohms),
        Temperature = ParametersAt,
        EnergyGap = gap,
        SaturationExponent = exponent,
    };

    /// <summary>A silicon diode that drops just what its data sheet allows at one current: more than most of its kind do.</summary>
    private static JunctionDiode ThroughLimit(double volts, double amperes, double milliohms)
    {
        var ideality = DiodeDefaults.Silicon.Ideality;
        var junctionVolts = volts - (amperes * milliohms / 1000);
        var saturation = amperes / (Math.Exp(junctionVolts / (ideality * JunctionDiode.BoltzmannOverCharge * ParametersAt.Kelvin)) - 1);
        return Silicon(saturation, ideality, milliohms);
    }

    /// <summary>Two equal diodes as one: n, Rs double; so do Eg and xti, which the temperature law divides by n.</summary>
    private static JunctionDiode InSeries(JunctionDiode leg) => leg with
    {
        Ideality = leg.Ideality * 2,
        SeriesResistance = leg.SeriesResistance * 2,
        EnergyGap = leg.EnergyGap * 2,
        SaturationExponent = leg.SaturationExponent * 2,
        ShortResistance = leg.ShortResistance * 2,
    };

    /// <summary>One leg through its two limits when hot, carried to 27 degC by the temperature law, then two of them side by side.</summary>
    private static JunctionDiode DualSchottky()
    {
        var defaults = DiodeDefaults.Schottky;
        var hot = Temperature.FromCelsius(125);
        ImmutableArray<ForwardPoint> limits =
            [new(Current.FromAmperes(7.5), Voltage.FromVolts(0.57)), new(Current.FromAmperes(15), Voltage.FromVolts(0.72))];
        var fit = ForwardPoints.Fit(limits, defaults.Ideality, hot)!;
        var leg = Schottky(fit.SaturationCurrent.Amperes, fit.Ideality, fit.SeriesResistance.Milliohms, defaults.EnergyGap, defaults.SaturationExponent) with { Temperature = hot };
        return leg with
        {
            SaturationCurrent = leg.SaturationCurrentAt(ParametersAt) * 2,
            SeriesResistance = leg.SeriesResistance / 2,
            Temperature = ParametersAt,
        };
    }
}
