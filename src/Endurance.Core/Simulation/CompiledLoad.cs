using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Simulation;

/// <summary>How a load draws, as numbers.</summary>
internal enum LoadLaw
{
    Current,
    Conductance,
    Power,
}

/// <summary>A load or a contactor's coil as numbers in SI units.</summary>
internal sealed class CompiledLoad
{
    /// <summary>Volts below which a constant current falls to zero, unless the minimum is lower still.</summary>
    public const double LowestConstantCurrentVolts = 1;

    public CompiledLoad(string name, int node, Demand demand, double duty, Voltage? minimum)
    {
        Name = name;
        Node = node;
        (Law, Value) = demand switch
        {
            ConstantCurrent c => (LoadLaw.Current, c.Current.Amperes * duty),
            ConstantResistance r => (LoadLaw.Conductance, duty / r.Resistance.Ohms),
            ConstantPower p => (LoadLaw.Power, p.Power.Watts * duty),
            _ => throw new ArgumentException("Unknown kind of demand.", nameof(demand)),
        };
        Minimum = minimum?.Volts ?? 0;
        Knee = minimum is null ? LowestConstantCurrentVolts : Math.Min(LowestConstantCurrentVolts, Minimum);
    }

    public string Name { get; }

    public int Node { get; }

    public LoadLaw Law { get; }

    /// <summary>Amperes, siemens or watts, duty included.</summary>
    public double Value { get; }

    /// <summary>Volts; 0 when there is none.</summary>
    public double Minimum { get; }

    public bool HasMinimum => Minimum > 0;

    /// <summary>Volts below which a constant current falls linearly to zero.</summary>
    public double Knee { get; }

    /// <summary>Volts at which it counts as lost: its minimum, its bus's cutoff or the last resort.</summary>
    public required double JudgedAt { get; init; }

    /// <summary>Volts; <see cref="double.NaN"/> when it never restarts.</summary>
    public double Restart { get; init; } = double.NaN;

    public bool CanRestart => !double.IsNaN(Restart);

    /// <summary>Seconds for which the restart voltage must hold.</summary>
    public double StartUp { get; init; }
}
