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
        var w = junction.Omega(junction.LogDrop + ((v + (junction.Saturation * resistance)) * junction.InverseEmission));
        var point = new BranchPoint((junction.CurrentScale * w) - junction.Saturation, w / ((1 + w) * resistance));
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
    /// <param name="load">What it draws.</param>
    /// <param name="v">Volts at its bus, against its ground.</param>
    /// <param name="powerShare">Share of a constant-power load that draws P/v, 0 to 1.</param>
    /// <param name="standIn">Siemens per watt of the resistor in place of the rest of a constant-power load.</param>
    public static BranchPoint Load(CompiledDemand load, double v, double powerShare, double standIn)
    {
        switch (load.Law)
        {
            case LoadLaw.Conductance:
                return new(load.BusValue * v, load.BusValue);
            case LoadLaw.Power:
                var point = ConstantPower(load.Value * powerShare, v, load.Conductors);
                return new(point.Amperes + (load.Value * standIn * v), point.Siemens + (load.Value * standIn));
            default:
                if (v >= load.Knee)
                    return new(load.Value, 0);
                return v > 0 ? new(load.Value * v / load.Knee, load.Value / load.Knee) : default;
        }
    }

    /// <summary>Current out of a bus into a battery: negative when it discharges.</summary>
    public static BranchPoint Battery(double v, double emf, double resistance, double chargeLimit, bool exhausted)
    {
        var into = (v - emf) / resistance;
        if (into > chargeLimit)
            return new(chargeLimit, 0);
        return exhausted && into < 0 ? default : new(into, 1 / resistance);
    }

    /// <summary>Current out of a bus into an alternator: never positive.</summary>
    public static BranchPoint Alternator(double v, CompiledAlternator alternator, double limit)
    {
        var given = (alternator.Setpoint - v) / alternator.Droop;
        if (given < 0)
            return default;
        return given >= limit ? new(-limit, 0) : new(-given, 1 / alternator.Droop);
    }

    /// <summary>Output current of a charger into its bus, and how fast it falls with the voltage there.</summary>
    public static BranchPoint Charger(double v, CompiledCharger charger)
    {
        var given = (charger.Output - v) / charger.Droop;
        if (given <= 0)
            return default;
        return given >= charger.Limit ? new(charger.Limit, 0) : new(given, 1 / charger.Droop);
    }

    /// <summary>P at the far end of a resistance: i = 2P/(v + sqrt(v^2 - 4PR)), which ends at v^2 = 4PR and goes on along its tangent.</summary>
    public static BranchPoint ConstantPower(double watts, double v, double resistance)
    {
        var at = Math.Max(v, End(watts, resistance));
        var root = resistance > 0 ? Math.Sqrt((at * at) - (4 * watts * resistance)) : at;
        var amperes = 2 * watts / (at + root);
        var siemens = -amperes / root;
        return new(amperes + (siemens * (v - at)), siemens);
    }

    /// <summary>Whether a constant power is at a voltage where only the tangent stands for it: no operating point.</summary>
    public static bool IsBeyondTheEnd(double watts, double v, double resistance) => watts > 0 && v < End(watts, resistance);

    private static double End(double watts, double resistance)
    {
        if (resistance <= 0)
            return ConstantPowerFloor;
        const double justAbove = 1.0001;
        return Math.Max(ConstantPowerFloor, justAbove * 2 * Math.Sqrt(watts * resistance));
    }
}
