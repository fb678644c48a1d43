namespace Endurance.Scenarios;

/// <summary>What sets a step off: <see cref="AtTime"/>, <see cref="WhenBelow"/> or <see cref="WhenWarned"/>.</summary>
public abstract record Trigger;
