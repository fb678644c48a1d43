using Endurance.Components;

namespace Endurance.Benchmarks.Hand;

/// <summary>A battery on one straight piece of its tables, with all resistance up to its diode, and Peukert's law.</summary>
internal struct HandBattery
{
    /// <summary>Relative width of the band about the lowest current in which the law does not change over.</summary>
    private const double Band = 1e-6;

    private readonly double[] knots;
    private readonly double[] emf;
    private readonly double[] ohms;
    private readonly double exponent;
    private readonly double fast;
    private readonly double slow;
    private readonly double lowest;
    private int segment;
    private double emfAtZero;
    private double emfSlope;
    private double ohmsAtZero;
    private double ohmsSlope;
    private double threshold;

    public HandBattery(Battery battery, double seriesOhms)
    {
        knots = [.. battery.Emf.X.Concat(battery.Resistance.X).Distinct().Order()];
        emf = [.. knots.Select(battery.Emf.At)];
        ohms = [.. knots.Select(z => battery.Resistance.At(z) + seriesOhms)];
        exponent = battery.PeukertExponent;
        lowest = battery.ReferenceCurrent.Amperes;
        slow = 1 / battery.RatedCapacity.Coulombs;
        fast = slow * Math.Pow(lowest, 1 - exponent);
        segment = knots.Length - 1;
        NextSegment();
    }

    /// <summary>Whether the current is above the 20-hour current, where the exponent holds.</summary>
    public bool IsFast { get; private set; }

    /// <summary>Charge at the lower end of the present piece.</summary>
    public double Knot { get; private set; }

    public readonly double Emf(double z) => emfAtZero + (emfSlope * z);

    public readonly double Ohms(double z) => ohmsAtZero + (ohmsSlope * z);

    /// <summary>Change of the charge a second at a discharge current in amperes.</summary>
    public readonly double Rate(double amperes) => IsFast ? -fast * Math.Pow(amperes, exponent) : -slow * amperes;

    /// <summary>Falls below zero where the law changes over.</summary>
    public readonly double ModeGuard(double amperes) => IsFast ? amperes - threshold : threshold - amperes;

    /// <summary>Seconds to the next knot at a rate.</summary>
    public readonly double ToKnot(double z, double rate) => (Knot - z) / rate;

    public void SetMode(bool isFast)
    {
        IsFast = isFast;
        threshold = lowest * (isFast ? 1 - Band : 1 + Band);
    }

    public void SetModeFor(double amperes) => SetMode(amperes > lowest);

    /// <summary>Takes the next piece down; <see langword="false"/>: there is none.</summary>
    public bool NextSegment()
    {
        if (segment == 0)
            return false;
        segment--;
        var width = knots[segment + 1] - knots[segment];
        emfSlope = (emf[segment + 1] - emf[segment]) / width;
        emfAtZero = emf[segment] - (emfSlope * knots[segment]);
        ohmsSlope = (ohms[segment + 1] - ohms[segment]) / width;
        ohmsAtZero = ohms[segment] - (ohmsSlope * knots[segment]);
        Knot = knots[segment];
        return true;
    }
}
