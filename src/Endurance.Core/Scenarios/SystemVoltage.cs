namespace Endurance.Scenarios;

/// <summary>Nominal voltage of the electrical system.</summary>
public enum SystemVoltage
{
    /// <summary>14 V, with 12 V batteries.</summary>
    Volts14,

    /// <summary>28 V, with 24 V batteries.</summary>
    Volts28,
}
