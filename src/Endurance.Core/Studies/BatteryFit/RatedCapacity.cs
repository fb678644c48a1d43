using Endurance.Quantities;

namespace Endurance.Studies.BatteryFit;

/// <summary>What the label says: a capacity at an hour rate.</summary>
/// <param name="Capacity">Above zero.</param>
/// <param name="Rate">Above zero.</param>
public sealed record RatedCapacity(Charge Capacity, Duration Rate)
{
    /// <summary>The current that takes the capacity out in the time of the rate.</summary>
    public Current Current => Current.FromAmperes(Capacity.AmpereHours / Rate.Hours);
}
