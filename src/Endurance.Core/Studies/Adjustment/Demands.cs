using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Studies.Adjustment;

/// <summary>Demands with another size.</summary>
internal static class Demands
{
    /// <summary>Amperes, watts or ohms.</summary>
    public static double Value(Demand demand) => demand switch
    {
        ConstantCurrent c => c.Current.Amperes,
        ConstantPower p => p.Power.Watts,
        ConstantResistance r => r.Resistance.Ohms,
        _ => throw new ArgumentException("Unknown kind of demand.", nameof(demand)),
    };

    /// <summary>The same kind of demand at so many amperes, watts or ohms.</summary>
    public static Demand WithValue(Demand demand, double value) => demand switch
    {
        ConstantCurrent => new ConstantCurrent(Current.FromAmperes(value)),
        ConstantPower => new ConstantPower(Power.FromWatts(value)),
        _ => new ConstantResistance(Resistance.FromOhms(value)),
    };

    /// <summary>So many times the draw: a resistance is divided.</summary>
    public static Demand Scaled(Demand demand, double factor) =>
        WithValue(demand, demand is ConstantResistance ? Value(demand) / factor : Value(demand) * factor);
}
