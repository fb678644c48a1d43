using Endurance.Components;

namespace Endurance.Simulation;

/// <summary>A battery as numbers in SI units: one table with the knots of EMF and resistance together, and the lifetime law.</summary>
/// <remarks>
/// Its part of the state vector begins at <see cref="Slot"/>: first the charge that EMF and resistance are read at (of the
/// available well in the kinetic model), then the level of the bound well if there is one, then the volts of each polarisation pair.
/// </remarks>
internal sealed class CompiledBattery
{
    private const double SecondsPerHour = 3600;

    private readonly double[] emfSlopes;
    private readonly double[] resistanceSlopes;
    private readonly double capacity;
    private readonly double referenceCurrent;
    private readonly double exponent;
    private readonly double lowFactor;
    private readonly double lifeFactor;
    private readonly LifetimeCurve? lifetimes;
    private readonly double chargeEfficiency;
    private readonly double acceptance;
    private readonly double available;
    private readonly double wellRate;
    private readonly double[] pairResistance;
    private readonly double[] pairTime;

    public CompiledBattery(Battery battery, int node, int slot)
    {
        Name = battery.Name;
        Node = node;
        Slot = slot;
        InitialCharge = battery.InitialCharge;
        Cells = battery.Cells ?? 0;
        Protection = CompiledProtection.Of(battery);
        Knots = [.. battery.Emf.X.Concat(battery.Resistance.X).Distinct().Order()];
        Emf = [.. Knots.Select(battery.Emf.At)];
        Resistance = [.. Knots.Select(z => battery.Resistance.At(z) * battery.ResistanceFactor)];
        emfSlopes = Slopes(Emf);
        resistanceSlopes = Slopes(Resistance);
        LowestCurrent = battery.LowestPeukertCurrent.Amperes;
        referenceCurrent = battery.ReferenceCurrent.Amperes;
        exponent = battery.PeukertExponent - 1;
        lifetimes = battery.Lifetimes;
        lifeFactor = battery.Health * battery.CapacityFactor;
        lowFactor = lifetimes is null ? Math.Pow(LowestCurrent / referenceCurrent, exponent) : 1;
        capacity = battery.EffectiveCapacity.Coulombs;
        chargeEfficiency = battery.ChargeEfficiency;
        acceptance = battery.ChargeAcceptancePerHour is { } perHour ? perHour / SecondsPerHour * capacity : double.PositiveInfinity;
        if (battery.CapacityModel == CapacityModel.Kinetic && battery.KineticWells is { } wells)
        {
            IsKinetic = true;
            available = wells.Available;
            wellRate = wells.RatePerHour / SecondsPerHour;
            capacity = wells.Capacity.Coulombs * lifeFactor;
        }

        pairResistance = [.. battery.Polarisation.Select(pair => pair.Resistance.Ohms * battery.ResistanceFactor)];
        pairTime = [.. battery.Polarisation.Select(pair => pair.Time.Seconds)];
    }

    public string Name { get; }

    public int Node { get; }

    /// <summary>First component of the state vector that is this battery's.</summary>
    public int Slot { get; }

    public double InitialCharge { get; }

    /// <summary>Cells in series; 0 when not known.</summary>
    public int Cells { get; }

    public bool IsKinetic { get; }

    public CompiledProtection Protection { get; }

    /// <summary>Charges at which EMF or resistance has a kink; from 0 to 1.</summary>
    public double[] Knots { get; }

    /// <summary>Volts at each knot.</summary>
    public double[] Emf { get; }

    /// <summary>Ohms at each knot.</summary>
    public double[] Resistance { get; }

    /// <summary>Amperes below which the lifetime law no longer stretches.</summary>
    public double LowestCurrent { get; }

    /// <summary>Seconds of the fastest polarisation pair; infinite without one.</summary>
    public double ShortestTime => pairTime.DefaultIfEmpty(double.PositiveInfinity).Min();

    /// <summary>Number of components in the state vector.</summary>
    public int StateCount => 1 + (IsKinetic ? 1 : 0) + pairTime.Length;

    /// <summary>Number of those that are charges; the rest are volts.</summary>
    public int ChargeCount => IsKinetic ? 2 : 1;

    /// <summary>Charge of the first component above which an exhausted battery can give again.</summary>
    public double RevivedCharge => IsKinetic ? 0.05 : 0.001;

    public void SetInitial(Span<double> y) => y.Slice(Slot, ChargeCount).Fill(InitialCharge);

    /// <summary>State of charge to report: of both wells together in the kinetic model.</summary>
    public double Charge(ReadOnlySpan<double> y) =>
        IsKinetic ? (available * y[Slot]) + ((1 - available) * y[Slot + 1]) : y[Slot];

    /// <summary>Segment of the table for a charge that is about to fall.</summary>
    public int SegmentAt(double z)
    {
        var segment = 0;
        while (segment < Knots.Length - 2 && z > Knots[segment + 1])
            segment++;
        return segment;
    }

    /// <summary>EMF on the straight line of a segment, extended beyond its ends, less what is polarised; never below zero.</summary>
    public double EmfAt(ReadOnlySpan<double> y, int segment)
    {
        var volts = Line(Emf, emfSlopes, y[Slot], segment);
        for (var i = 0; i < pairTime.Length; i++)
            volts -= y[Slot + ChargeCount + i];
        return Math.Max(0, volts); // a step tried too far can polarise more than there is
    }

    /// <summary>Resistance on the straight line of a segment, extended beyond its ends but kept above zero.</summary>
    public double ResistanceAt(double z, int segment) =>
        Math.Max(Line(Resistance, resistanceSlopes, z, segment), 0.1 * Math.Min(Resistance[segment], Resistance[segment + 1]));

    /// <summary>Largest charge current in amperes; positive infinity without a limit.</summary>
    public double ChargeLimitAt(double z)
    {
        if (Protection.BlocksCharge)
            return 0;
        return double.IsInfinity(acceptance) ? acceptance : Math.Max(0, acceptance * (1 - z));
    }

    /// <summary>Writes the rates of its components per second at a current in amperes, positive when discharging.</summary>
    public void Rates(double current, BatteryMode mode, ReadOnlySpan<double> y, Span<double> rates)
    {
        if (IsKinetic)
        {
            var effective = mode is BatteryMode.Full or BatteryMode.Charging ? current * chargeEfficiency : current;
            var level = y[Slot + 1] - y[Slot];
            var rise = (-effective / (available * capacity)) + (wellRate * (1 - available) * level);

            // A full available well only passes on what the bound well takes.
            rates[Slot] = mode == BatteryMode.Full ? Math.Min(0, rise) : rise;
            rates[Slot + 1] = -wellRate * available * level;
        }
        else
        {
            rates[Slot] = ChargeRate(current, mode);
        }

        for (var i = 0; i < pairTime.Length; i++)
        {
            var slot = Slot + ChargeCount + i;
            rates[slot] = ((current * pairResistance[i]) - y[slot]) / pairTime[i];
        }
    }

    private double ChargeRate(double current, BatteryMode mode) => mode switch
    {
        BatteryMode.DischargingFast when lifetimes is not null =>
            -1 / (lifeFactor * lifetimes.SecondsAt(Math.Max(current, LowestCurrent))),
        BatteryMode.DischargingFast => -current / capacity * Math.Pow(Math.Max(current, 0) / referenceCurrent, exponent),
        BatteryMode.DischargingSlowly => -current / capacity * lowFactor,
        BatteryMode.Charging => -current / capacity * lowFactor * chargeEfficiency,
        _ => 0,
    };

    private double Line(double[] values, double[] slopes, double z, int segment) => values[segment] + (slopes[segment] * (z - Knots[segment]));

    /// <summary>By segment.</summary>
    private double[] Slopes(double[] values) =>
        [.. Enumerable.Range(0, values.Length - 1).Select(i => (values[i + 1] - values[i]) / (Knots[i + 1] - Knots[i]))];
}
