using System.Collections.Immutable;

namespace Endurance.Studies.GroundTest;

/// <summary>One step of a ground test: set up, measure, compare.</summary>
public sealed record TestPoint
{
    /// <summary>From 1, in the order in which the points are flown on the ground.</summary>
    public int Number { get; init; }

    public required TestGroup Group { get; init; }

    /// <summary>What the point proves, in a few words.</summary>
    public required string Title { get; init; }

    /// <summary>Parts that the point proves.</summary>
    public required ImmutableArray<string> Parts { get; init; }

    /// <summary>What is on, off, open, closed, connected; one sentence each.</summary>
    public required ImmutableArray<string> Configuration { get; init; }

    public required ImmutableArray<ExpectedReading> Readings { get; init; }

    /// <summary>When to switch everything off at once, besides smell, smoke and heat.</summary>
    public required ImmutableArray<string> Abort { get; init; }

    /// <summary>Sentences about this point alone.</summary>
    public ImmutableArray<string> Remarks { get; init; } = [];

    /// <summary>What was simulated for the predictions; <see langword="null"/> where they come from more than the start of one run.</summary>
    internal TestSetup? Setup { get; init; }
}
