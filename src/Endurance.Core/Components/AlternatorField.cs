using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>What excites an alternator. Drawn while its switch is on, also after the alternator has failed; without volts here there is no output.</summary>
public sealed record AlternatorField
{
    public required string Bus { get; init; }

    /// <summary>Above zero.</summary>
    public required Current Current { get; init; }

    public bool IsOn { get; init; } = true;
}
