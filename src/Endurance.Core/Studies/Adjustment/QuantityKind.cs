namespace Endurance.Studies.Adjustment;

/// <summary>What an adjustable quantity is measured in.</summary>
public enum QuantityKind
{
    /// <summary>A bare number, often one that multiplies.</summary>
    Number,

    /// <summary>A fraction, written in percent.</summary>
    Fraction,
    Volts,
    Amperes,
    Ohms,
    Watts,

    /// <summary>Coulombs, written in ampere-hours.</summary>
    Charge,

    /// <summary>Seconds, written in minutes.</summary>
    Duration,

    /// <summary>Kelvin, written in degrees Celsius.</summary>
    Temperature,
}
