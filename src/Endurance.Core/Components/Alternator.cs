using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>A regulated source: its set-point behind a droop, never taking current, never giving more than its rating.</summary>
public sealed record Alternator
{
    public required string Name { get; init; }

    public required string Bus { get; init; }

    /// <summary>Regulated voltage at no load; above zero.</summary>
    public required Voltage Setpoint { get; init; }

    /// <summary>Current limit with the engine at cruise; above zero.</summary>
    public required Current Rated { get; init; }

    /// <summary>Fall of voltage per ampere; above zero.</summary>
    public required Resistance Droop { get; init; }

    /// <summary>Name of the engine that turns it; <see langword="null"/>: always turned.</summary>
    public string? DrivenBy { get; init; }

    public bool IsOn { get; init; } = true;

    /// <summary>Current limit with the engine at idle; <see langword="null"/>: the same as <see cref="Rated"/>.</summary>
    public Current? LimitIdle { get; init; }

    /// <summary>Bus voltage above which its over-voltage relay takes it off for good; <see langword="null"/>: none fitted.</summary>
    public Voltage? TripsAbove { get; init; }

    public AlternatorField? Field { get; init; }
}
