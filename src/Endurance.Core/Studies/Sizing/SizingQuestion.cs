namespace Endurance.Studies.Sizing;

/// <summary>What is to be sized.</summary>
public sealed record SizingQuestion
{
    public required SizingFind Find { get; init; }

    /// <summary>Name of a battery, or of a bus for <see cref="SizingFind.Load"/>; empty where the question is about neither.</summary>
    public required string Subject { get; init; }

    /// <summary>The battery's resistance stays as it is; otherwise it falls as the capacity grows.</summary>
    public bool KeepsResistance { get; init; }
}
