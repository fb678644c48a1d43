namespace Endurance.Simulation;

/// <summary>The current laws of all kinds of branches: each sets a branch's current and derivatives at its volts.</summary>
internal static class BranchLaw
{
    /// <summary>Volts below which P/v goes on along its tangent; below any voltage an aircraft runs at.</summary>
    private const double ConstantPowerFloor = 0.05;

    /// <summary>Fraction of the regulated drop below which an ideal-diode controller is off.</summary>
    private const double ControllerOff = 0.95;

    /// <summary>A resistance.</summary>
    public static void Ohmic(ref Branch branch, double siemens) =>
        branch.SetLine(branch.Volts * siemens, siemens, double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>Junction diode with all resistances of the feed in series.</summary>
    /// <remarks>
    /// i = (a/R) w(ln(Is R/a) + (v + Is R)/a) - Is with a = n k T/q and w the Wright omega function, whose derivatives are w/(1 + w),
    /// w/(1 + w)^3, w (1 - 2w)/(1 + w)^5 and w (1 - 8w + 6w^2)/(1 + w)^7. The last is at most w (1 + 6w^2)/(1 + w)^7, which a fifth of
    /// a changes by less than 1.3.
    /// </remarks>
    public static void Junction(ref Branch branch, JunctionState junction, double leakage)
    {
        const double reach = 0.2, restOfMost = 1.3 / 24;
        var v = branch.Volts;
        var w = junction.Omega(junction.LogDrop + (v * junction.InverseEmission));
        var falling = 1 / (1 + w);
        var step = falling * falling * junction.InverseEmission;
        var siemens = w * falling * junction.Siemens;
        var second = siemens * step;
        var third = second * step;
        var far = reach * junction.Emission;
        branch.SetCurve(
            (junction.CurrentScale * w) - junction.Saturation, siemens, second / 2, third * (1 - (2 * w)) / 6,
            restOfMost * third * step * (1 + (6 * w * w)), v - far, v + far);
        if (leakage <= 0)
            return;
        branch.StopAt(0);
        if (v < 0)
            branch.AddParallel(leakage);
    }

    /// <summary>Ideal-diode controller with conductors in series.</summary>
    public static void IdealDiode(ref Branch branch, double onResistance, double regulatedDrop, double conductors)
    {
        var v = branch.Volts;
        var full = onResistance + conductors;
        var wide = regulatedDrop * full / onResistance;
        var threshold = ControllerOff * regulatedDrop;
        if (v >= wide && v > 0)
        {
            branch.SetLine(v / full, 1 / full, wide, double.PositiveInfinity, piece: 2);
        }
        else if (v <= threshold)
        {
            branch.SetLine(0, 0, double.NegativeInfinity, threshold);
        }
        else
        {
            var slope = 20 / onResistance;
            var siemens = slope / (1 + (slope * conductors));
            branch.SetLine((v - threshold) * siemens, siemens, threshold, wide, piece: 1);
        }
    }

    /// <summary>Amperes into a load at volts between its bus and its ground.</summary>
    public static double Load(CompiledDemand load, double v)
    {
        var branch = new Branch { Volts = v };
        switch (load.Law)
        {
            case LoadLaw.Conductance:
                return load.BusValue * v;
            case LoadLaw.Power:
                ConstantPower(ref branch, load.Value, load.Conductors);
                break;
            default:
                ConstantCurrent(ref branch, load.Value, load.Knee);
                break;
        }

        return branch.Amperes;
    }

    /// <summary>A constant current that falls to zero with the voltage below its knee.</summary>
    public static void ConstantCurrent(ref Branch branch, double amperes, double knee)
    {
        if (branch.Volts >= knee)
            branch.SetLine(amperes, 0, knee, double.PositiveInfinity, piece: 2);
        else if (branch.Volts > 0)
            branch.SetLine(amperes * branch.Volts / knee, amperes / knee, 0, knee, piece: 1);
        else
            branch.SetLine(0, 0, double.NegativeInfinity, 0);
    }

    /// <summary>A battery, from the airframe to its bus: its volts are the bus's, negative.</summary>
    public static void Battery(ref Branch branch, double emf, double resistance, double chargeLimit, bool exhausted)
    {
        var given = (emf + branch.Volts) / resistance;
        var full = -emf - (chargeLimit * resistance);
        if (-given > chargeLimit)
            branch.SetLine(-chargeLimit, 0, double.NegativeInfinity, full, piece: 1);
        else if (exhausted && given > 0)
            branch.SetLine(0, 0, -emf, double.PositiveInfinity, piece: 2);
        else
            branch.SetLine(given, 1 / resistance, full, exhausted ? -emf : double.PositiveInfinity);
    }

    /// <summary>An alternator or a charger's output, from the airframe to its bus: on its droop between nothing and its limit.</summary>
    /// <param name="branch">Its volts are the bus's, negative.</param>
    /// <param name="setpoint">Volts at no load.</param>
    /// <param name="droop">Ohms.</param>
    /// <param name="limit">Amperes.</param>
    public static void Regulated(ref Branch branch, double setpoint, double droop, double limit)
    {
        var given = (setpoint + branch.Volts) / droop;
        var limited = (limit * droop) - setpoint;
        if (given < 0)
            branch.SetLine(0, 0, double.NegativeInfinity, -setpoint);
        else if (given >= limit)
            branch.SetLine(limit, 0, limited, double.PositiveInfinity, piece: 2);
        else
            branch.SetLine(given, 1 / droop, -setpoint, limited, piece: 1);
    }

    /// <summary>P at the far end of a resistance: i = 2P/(v + s) with s^2 = v^2 - 4PR, which ends at s = 0 and goes on along its tangent.</summary>
    /// <remarks>
    /// Its derivatives are -i/s, 2P/s^3, -6P v/s^5 and 6P (5v^2 - s^2)/s^7. The last is at most 30P v^2/s^7, which a twentieth of s^2/v
    /// changes by less than 1.6.
    /// </remarks>
    /// <returns>Whether the voltage is one at which only the tangent stands for it: no operating point.</returns>
    public static bool ConstantPower(ref Branch branch, double watts, double resistance)
    {
        if (watts <= 0)
        {
            Ohmic(ref branch, 0);
            return false;
        }

        const double reach = 0.05, restOfMost = 1.6 * 30 / 24;
        var v = branch.Volts;
        var end = End(watts, resistance);
        var at = Math.Max(v, end);
        var square = (at * at) - (4 * watts * resistance);
        var root = resistance > 0 ? Math.Sqrt(square) : at;
        var inverse = 1 / root;
        var amperes = resistance > 0 ? 2 * watts / (at + root) : watts * inverse;
        var siemens = -amperes * inverse;
        if (v < end)
        {
            branch.SetLine(amperes + (siemens * (v - at)), siemens, v, v);
            return true;
        }

        var second = watts * inverse * inverse * inverse;
        var third = second * at * inverse * inverse;
        var far = resistance > 0 ? reach * square / at : reach * at;
        branch.SetCurve(amperes, siemens, second, -third, restOfMost * third * at * inverse * inverse, Math.Max(end, v - far), v + far);
        return false;
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
