using Endurance.Components;

namespace Endurance.Simulation;

/// <summary>A current law in SI units, with the conductors between the bus and the load's own terminals in series.</summary>
internal sealed class CompiledDemand
{
    /// <summary>Volts below which a constant current falls to zero, unless the minimum is lower still.</summary>
    private const double LowestConstantCurrentVolts = 1;

    /// <param name="demand">What the load draws at full duty.</param>
    /// <param name="duty">Above 0, at most 1.</param>
    /// <param name="minimum">Volts at the terminals; 0 when there is none.</param>
    /// <param name="conductors">Ohms between bus and terminals, there and back; zero or more.</param>
    public CompiledDemand(Demand demand, double duty, double minimum, double conductors)
    {
        Conductors = conductors;
        (Law, Value) = demand switch
        {
            ConstantCurrent c => (LoadLaw.Current, c.Current.Amperes * duty),
            ConstantResistance r => (LoadLaw.Conductance, duty / r.Resistance.Ohms),
            ConstantPower p => (LoadLaw.Power, p.Power.Watts * duty),
            _ => throw new ArgumentException("Unknown kind of demand.", nameof(demand)),
        };
        Knee = AtBus(minimum > 0 ? Math.Min(LowestConstantCurrentVolts, minimum) : LowestConstantCurrentVolts);
        BusValue = Law == LoadLaw.Conductance ? Value / (1 + (Value * conductors)) : Value;
    }

    public LoadLaw Law { get; }

    /// <summary>At the terminals: amperes, siemens or watts, duty included.</summary>
    public double Value { get; }

    /// <summary>As seen from the bus: a conductance with the conductors in series, otherwise <see cref="Value"/>.</summary>
    public double BusValue { get; }

    /// <summary>Ohms between bus and terminals.</summary>
    public double Conductors { get; }

    /// <summary>Volts at the bus below which a constant current falls linearly to zero.</summary>
    public double Knee { get; }

    /// <summary>Volts at the bus for volts above zero at the terminals, while it draws.</summary>
    /// <remarks>
    /// A constant power has its least volts at the bus where half of them are left for it, at sqrt(P R): below that its terminals
    /// are never, for there it collapses, and the bus that would belong to fewer volts is a higher one again.
    /// </remarks>
    public double AtBus(double terminals) => Law switch
    {
        LoadLaw.Current => terminals + (Conductors * Value),
        LoadLaw.Conductance => terminals * (1 + (Conductors * Value)),
        _ => AtBusOfPower(Math.Max(terminals, Math.Sqrt(Value * Conductors))),
    };

    private double AtBusOfPower(double terminals) => terminals + (Conductors * Value / terminals);
}
