using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>How a load draws: <see cref="ConstantCurrent"/>, <see cref="ConstantResistance"/> or <see cref="ConstantPower"/>.</summary>
public abstract record Demand
{
    /// <summary>Draw at a voltage above zero.</summary>
    public Current CurrentAt(Voltage voltage) => this switch
    {
        ConstantCurrent c => c.Current,
        ConstantResistance r => voltage / r.Resistance,
        ConstantPower p => Current.FromAmperes(p.Power.Watts / voltage.Volts),
        _ => throw new InvalidOperationException("Unknown kind of demand."),
    };
}
