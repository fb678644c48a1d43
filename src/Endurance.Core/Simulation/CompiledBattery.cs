using Endurance.Components;

namespace Endurance.Simulation;

/// <summary>A battery as numbers in SI units: one table with the knots of EMF and resistance together, and the lifetime law.</summary>
internal sealed class CompiledBattery
{
    private const double SecondsPerHour = 3600;

    public CompiledBattery(Battery battery, int node)
    {
        Name = battery.Name;
        Node = node;
        InitialCharge = battery.InitialCharge;
        Knots = [.. battery.Emf.X.Concat(battery.Resistance.X).Distinct().Order()];
        Emf = [.. Knots.Select(battery.Emf.At)];
        Resistance = [.. Knots.Select(z => battery.Resistance.At(z) * battery.ResistanceFactor)];
        capacity = battery.EffectiveCapacity.Coulombs;
        referenceCurrent = battery.ReferenceCurrent.Amperes;
        LowestCurrent = battery.LowestPeukertCurrent.Amperes;
        exponent = battery.PeukertExponent - 1;
        lowFactor = Math.Pow(LowestCurrent / referenceCurrent, exponent);
        chargeEfficiency = battery.ChargeEfficiency;
        acceptance = battery.ChargeAcceptancePerHour is { } perHour ? perHour / SecondsPerHour * capacity : double.PositiveInfinity;
    }

    public string Name { get; }

    public int Node { get; }

    public double InitialCharge { get; }

    /// <summary>Charges at which EMF or resistance has a kink; from 0 to 1.</summary>
    public double[] Knots { get; }

    /// <summary>Volts at each knot.</summary>
    public double[] Emf { get; }

    /// <summary>Ohms at each knot.</summary>
    public double[] Resistance { get; }

    /// <summary>Amperes below which the lifetime law no longer stretches.</summary>
    public double LowestCurrent { get; }

    private readonly double capacity;
    private readonly double referenceCurrent;
    private readonly double exponent;
    private readonly double lowFactor;
    private readonly double chargeEfficiency;
    private readonly double acceptance;

    /// <summary>Segment of the table for a charge that is about to fall, or to rise when <paramref name="rising"/>.</summary>
    public int SegmentAt(double z, bool rising)
    {
        var segment = 0;
        while (segment < Knots.Length - 2 && (rising ? z >= Knots[segment + 1] : z > Knots[segment + 1]))
            segment++;
        return segment;
    }

    /// <summary>EMF on the straight line of a segment, extended beyond its ends.</summary>
    public double EmfAt(double z, int segment) => Line(Emf, z, segment);

    /// <summary>Resistance on the straight line of a segment, extended beyond its ends but kept above zero.</summary>
    public double ResistanceAt(double z, int segment) =>
        Math.Max(Line(Resistance, z, segment), 0.1 * Math.Min(Resistance[segment], Resistance[segment + 1]));

    /// <summary>Largest charge current in amperes; positive infinity without a limit.</summary>
    public double ChargeLimitAt(double z) => double.IsInfinity(acceptance) ? acceptance : Math.Max(0, acceptance * (1 - z));

    /// <summary>Rate of the state of charge per second at a current in amperes.</summary>
    public double ChargeRate(double current, BatteryMode mode) => mode switch
    {
        BatteryMode.DischargingFast => -current / capacity * Math.Pow(Math.Max(current, 0) / referenceCurrent, exponent),
        BatteryMode.DischargingSlowly => -current / capacity * lowFactor,
        BatteryMode.Charging => -current / capacity * lowFactor * chargeEfficiency,
        _ => 0,
    };

    private double Line(double[] values, double z, int segment) =>
        values[segment] + ((values[segment + 1] - values[segment]) * (z - Knots[segment]) / (Knots[segment + 1] - Knots[segment]));
}
