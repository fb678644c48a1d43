using Endurance.Numerics;

namespace Endurance.Simulation;

/// <summary>A branch current and its slope at one voltage.</summary>
/// <param name="Amperes">Current.</param>
/// <param name="Siemens">Its derivative by voltage, zero or more but for constant power.</param>
internal readonly record struct BranchPoint(double Amperes, double Siemens);

/// <summary>The current laws of all kinds of branches.</summary>
internal static class BranchLaw
{
    /// <summary>Volts below which P/v goes on along its tangent; below any voltage an aircraft runs at.</summary>
    private const double ConstantPowerFloor = 0.05;

    /// <summary>Fraction of the regulated drop below which an ideal-diode controller is off.</summary>
    private const double ControllerOff = 0.95;

    /// <summary>Junction diode with all resistances of the feed in series.</summary>
    /// <remarks>i = (a/R) w(ln(Is R/a) + (v + Is R)/a) - Is with a = n k T/q and w the Wright omega function.</remarks>
    public static BranchPoint Junction(double v, JunctionState junction, double resistance, double leakage)
    {
        var w = WrightOmega.At(junction.LogDrop + ((v + (junction.Saturation * resistance)) / junction.Emission));
        var point = new BranchPoint((junction.Emission / resistance * w) - junction.Saturation, w / (1 + w) / resistance);
        return v < 0 && leakage > 0 ? new(point.Amperes + (leakage * v), point.Siemens + leakage) : point;
    }

    /// <summary>Ideal-diode controller with conductors in series.</summary>
    public static BranchPoint IdealDiode(double v, double onResistance, double regulatedDrop, double conductors)
    {
        var full = onResistance + conductors;
        if (v >= regulatedDrop * full / onResistance)
            return v > 0 ? new(v / full, 1 / full) : default;
        var threshold = ControllerOff * regulatedDrop;
        if (v <= threshold)
            return default;
        var slope = 20 / onResistance;
        var siemens = slope / (1 + (slope * conductors));
        return new((v - threshold) * siemens, siemens);
    }

    /// <summary>Current into a load.</summary>
    /// <param name="load">The load.</param>
    /// <param name="v">Volts at its bus.</param>
    /// <param name="powerShare">Share of a constant-power load that draws P/v, 0 to 1.</param>
    /// <param name="standIn">Siemens per watt of the resistor in place of the rest of a constant-power load.</param>
    public static BranchPoint Load(CompiledLoad load, double v, double powerShare, double standIn)
    {
        switch (load.Law)
        {
            case LoadLaw.Conductance:
                return new(load.Value * v, load.Value);
            case LoadLaw.Power:
                var point = ConstantPower(load.Value * powerShare, v);
                return new(point.Amperes + (load.Value * standIn * v), point.Siemens + (load.Value * standIn));
            default:
                return ConstantCurrent(load.Value, v, load.Knee);
        }
    }

    /// <summary>A constant-power load held at one current; as any constant current it falls to zero at last, so that a solution exists.</summary>
    public static BranchPoint Standing(double amperes, double v) => ConstantCurrent(amperes, v, CompiledLoad.LowestConstantCurrentVolts);

    /// <summary>Current out of a bus into a battery: negative when it discharges.</summary>
    public static BranchPoint Battery(double v, double emf, double resistance, double chargeLimit, bool exhausted)
    {
        var into = (v - emf) / resistance;
        if (into > chargeLimit)
            return new(chargeLimit, 0);
        return exhausted && into < 0 ? default : new(into, 1 / resistance);
    }

    /// <summary>Current out of a bus into an alternator: never positive.</summary>
    public static BranchPoint Alternator(double v, CompiledAlternator alternator)
    {
        var given = (alternator.Setpoint - v) / alternator.Droop;
        if (given < 0)
            return default;
        return given >= alternator.Limit ? new(-alternator.Limit, 0) : new(-given, 1 / alternator.Droop);
    }

    private static BranchPoint ConstantCurrent(double amperes, double v, double knee)
    {
        if (v >= knee)
            return new(amperes, 0);
        return v > 0 ? new(amperes * v / knee, amperes / knee) : default;
    }

    private static BranchPoint ConstantPower(double watts, double v)
    {
        if (v >= ConstantPowerFloor)
            return new(watts / v, -watts / (v * v));
        var slope = watts / (ConstantPowerFloor * ConstantPowerFloor);
        return new((watts / ConstantPowerFloor) - (slope * (v - ConstantPowerFloor)), -slope);
    }
}
