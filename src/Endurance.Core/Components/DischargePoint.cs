using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>One entry of a data sheet's discharge table: a new, warm battery at a constant current or a constant power.</summary>
public sealed record DischargePoint
{
    /// <summary>Either this or <see cref="Power"/>; above zero.</summary>
    public Current? Current { get; init; }

    public Power? Power { get; init; }

    /// <summary>Time to <see cref="EndVoltage"/>; above zero.</summary>
    public required Duration Lasts { get; init; }

    /// <summary>Terminal voltage at which the test ended; above zero.</summary>
    public required Voltage EndVoltage { get; init; }

    /// <summary>What the terminals have under this load; zero where the battery cannot give the power.</summary>
    public Voltage TerminalVoltage(Voltage emf, Resistance resistance) => Current is { } current
        ? emf - (current * resistance)
        : Voltage.FromVolts(LifetimeFit.VoltsAt(Power!.Value.Watts, emf.Volts, resistance.Ohms));
}
