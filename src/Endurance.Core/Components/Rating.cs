using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>A lifetime that was stated for a new, warm battery, as it was stated.</summary>
public sealed record Rating
{
    /// <summary>Constant discharge current, or the mean current of a constant power; above zero.</summary>
    public required Current Current { get; init; }

    /// <summary>Time to <see cref="EndVoltage"/>; above zero.</summary>
    public required Duration Lasts { get; init; }

    /// <summary>Terminal voltage at which the time ends; <see langword="null"/>: not stated.</summary>
    public Voltage? EndVoltage { get; init; }

    /// <summary>Stated as a power instead of a current.</summary>
    public Power? Power { get; init; }
}
