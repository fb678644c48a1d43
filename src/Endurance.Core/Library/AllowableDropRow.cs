using Endurance.Quantities;

namespace Endurance.Library;

/// <summary>One nominal voltage of <see cref="AllowableDrop"/>.</summary>
/// <param name="Nominal">Of the system.</param>
/// <param name="Continuous">Between the bus and the equipment's ground, steady current.</param>
/// <param name="Intermittent">The same, for a current that comes for a short time.</param>
public sealed record AllowableDropRow(Voltage Nominal, Voltage Continuous, Sourced<Voltage> Intermittent);
