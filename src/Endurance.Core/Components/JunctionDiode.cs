using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>Shockley diode with series resistance, i = Is (exp((v - i Rs)/(n k T/q)) - 1).</summary>
/// <remarks>Is(T) = Is (T/T0)^(XTI/n) exp((Eg/(n k)) (1/T0 - 1/T)), the temperature relation of SPICE.</remarks>
public sealed record JunctionDiode : Diode
{
    /// <summary>Boltzmann constant over elementary charge, V/K; exact by the SI of 2019.</summary>
    public const double BoltzmannOverCharge = 1.380649e-23 / 1.602176634e-19;

    public required SemiconductorKind Kind { get; init; }

    /// <summary>Saturation current at <see cref="Temperature"/>; above zero.</summary>
    public required Current SaturationCurrent { get; init; }

    /// <summary>Emission coefficient n; 0.5 to 10 (two legs in series count double).</summary>
    public required double Ideality { get; init; }

    /// <summary>Zero or more.</summary>
    public required Resistance SeriesResistance { get; init; }

    /// <summary>Junction temperature at which the parameters hold; also the junction temperature of the run when <see cref="HeatPath"/> is absent.</summary>
    public required Temperature Temperature { get; init; }

    /// <summary>Band gap in electronvolts; above zero.</summary>
    public required double EnergyGap { get; init; }

    /// <summary>Saturation current temperature exponent XTI.</summary>
    public required double SaturationExponent { get; init; }

    /// <summary>Ohmic leakage that counts for reverse voltage only.</summary>
    public Conductance Leakage { get; init; }

    /// <summary>Kelvin per watt from junction to ambient, above zero; <see langword="null"/>: the junction stays at <see cref="Temperature"/>.</summary>
    public double? HeatPath { get; init; }

    public Temperature? MaximumJunction { get; init; }

    /// <summary>Saturation current at another junction temperature.</summary>
    public Current SaturationCurrentAt(Temperature junction)
    {
        var t = junction.Kelvin;
        var t0 = Temperature.Kelvin;
        var exponent = EnergyGap / (Ideality * BoltzmannOverCharge) * ((1 / t0) - (1 / t));
        return Current.FromAmperes(SaturationCurrent.Amperes * Math.Pow(t / t0, SaturationExponent / Ideality) * Math.Exp(exponent));
    }

    /// <summary>n k T / q at a junction temperature.</summary>
    public Voltage EmissionVoltageAt(Temperature junction) => Voltage.FromVolts(Ideality * BoltzmannOverCharge * junction.Kelvin);

    /// <summary>Forward voltage at a current of zero or more, n Vt ln(I/Is + 1) + I Rs.</summary>
    public Voltage ForwardVoltageAt(Current current, Temperature junction) =>
        (EmissionVoltageAt(junction) * Math.Log((current / SaturationCurrentAt(junction)) + 1)) + (current * SeriesResistance);

    /// <summary>Current that leaks back at a reverse voltage of zero or more, Is(T) (1 - exp(-v/(n k T/q))) + leakage x v.</summary>
    /// <remarks>Data sheets allow many times Is: give <see cref="Leakage"/> as their greatest reverse current over its voltage to be on the safe side.</remarks>
    public Current ReverseCurrentAt(Voltage reverse, Temperature junction) =>
        (SaturationCurrentAt(junction) * (1 - Math.Exp(-(reverse / EmissionVoltageAt(junction))))) + Current.FromAmperes(Leakage.Siemens * reverse.Volts);

    /// <summary>Charge that leaks back through it from a battery at a steady voltage, as in an aircraft that is parked for a month.</summary>
    public Charge ReverseChargeOver(Duration parked, Voltage battery, Temperature junction) => ReverseCurrentAt(battery, junction) * parked;
}
