namespace Endurance.Scenarios;

/// <summary>What sets a step off: <see cref="AtTime"/> or <see cref="WhenBelow"/>.</summary>
public abstract record Trigger;
