using Endurance.Components;
using Endurance.Numerics;

namespace Endurance.Library;

/// <summary>What a chemistry supplies for a 12 V battery when the scenario does not give it.</summary>
public sealed record ChemistryValues
{
    public required Chemistry Chemistry { get; init; }

    /// <summary>Cells in series in a 12 V battery.</summary>
    public required Sourced<int> Cells { get; init; }

    /// <summary>Volts over charge at rest, of the 12 V battery; the value at charge 0 is replaced by <see cref="EndVoltsPerCell"/> and the drop of the rated current.</summary>
    public required Sourced<PiecewiseLinear> Emf { get; init; }

    /// <summary>Terminal volts a cell at which the rated discharge ends.</summary>
    public required Sourced<double> EndVoltsPerCell { get; init; }

    /// <summary>Milliohms times ampere-hours over charge, of the 12 V battery at 25 degC: a battery of C ampere-hours has this over C.</summary>
    public required Sourced<PiecewiseLinear> MilliohmAmpereHours { get; init; }

    public required Sourced<double> PeukertExponent { get; init; }

    public required Sourced<double> ChargeEfficiency { get; init; }

    /// <summary>Charge current limit as effective capacity times charge missing, per hour.</summary>
    public required Sourced<double> ChargeAcceptancePerHour { get; init; }

    /// <summary>Capacity over that at 25 degC, by degrees Celsius.</summary>
    public required Sourced<PiecewiseLinear> CapacityOverTemperature { get; init; }

    /// <summary>Resistance over that at 25 degC, by degrees Celsius.</summary>
    public required Sourced<PiecewiseLinear> ResistanceOverTemperature { get; init; }
}
