using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;

namespace Endurance.Library;

/// <summary>Library values fitted to one new battery: its system voltage and capacity.</summary>
public static class ChemistryDefaults
{
    /// <summary>Ohms over charge at 25 degC.</summary>
    /// <param name="values">The chemistry.</param>
    /// <param name="batteries12">12 V batteries in series that it counts for; above 0.</param>
    /// <param name="ratedCapacity">Above 0.</param>
    public static PiecewiseLinear Resistance(ChemistryValues values, double batteries12, Charge ratedCapacity) =>
        values.MilliohmAmpereHours.Value.Scaled(1e-3 * batteries12 / ratedCapacity.AmpereHours);

    /// <summary>Volts over charge; empty at the end voltage of the rating plus the drop of the rated current.</summary>
    public static PiecewiseLinear Emf(ChemistryValues values, double batteries12, Current rated, PiecewiseLinear newResistance)
    {
        var table = values.Emf.Value.Scaled(batteries12);
        var empty = (values.EndVoltsPerCell.Value * values.Cells.Value * batteries12) + (rated.Amperes * newResistance.At(0));
        return new PiecewiseLinear(table.X, [Math.Min(empty, table.Y[1]), .. table.Y[1..]]);
    }
}
