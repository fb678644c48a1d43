using Endurance.Quantities;

namespace Endurance.Scenarios;

/// <summary>What batteries a nominal voltage goes with.</summary>
public static class SystemVoltages
{
    /// <summary>12 V batteries in series that make it up: 1 or 2.</summary>
    public static int BatteriesInSeries(this SystemVoltage system) => system == SystemVoltage.Volts28 ? 2 : 1;

    /// <summary>12 V or 24 V.</summary>
    public static Voltage BatteryVoltage(this SystemVoltage system) => Voltage.FromVolts(12 * system.BatteriesInSeries());
}
