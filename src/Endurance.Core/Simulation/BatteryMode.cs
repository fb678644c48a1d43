namespace Endurance.Simulation;

/// <summary>Which branch of the lifetime law a battery is on; inside one the rate of charge is smooth.</summary>
internal enum BatteryMode
{
    /// <summary>At or above the 20-hour current.</summary>
    DischargingFast,

    /// <summary>Below the 20-hour current.</summary>
    DischargingSlowly,

    Charging,

    /// <summary>Charge current passes and gains nothing.</summary>
    Full,
}
