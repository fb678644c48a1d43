using System.Collections.Immutable;

namespace Endurance.Studies.GroundTest;

/// <summary>A ground test from the first meter reading to the run with the engine.</summary>
public sealed record GroundTestPlan
{
    /// <summary>Of the scenario.</summary>
    public required string Title { get; init; }

    public required string Objective { get; init; }

    /// <summary>Conditions and limits; sentences.</summary>
    public required ImmutableArray<string> Conditions { get; init; }

    public required ImmutableArray<string> Safety { get; init; }

    /// <summary>Why the points stand in this order; sentences.</summary>
    public required ImmutableArray<string> BuildUp { get; init; }

    /// <summary>When the timed discharge ends, so that it spares the batteries; sentences.</summary>
    public required ImmutableArray<string> StopRule { get; init; }

    public required ImmutableArray<TestPoint> Points { get; init; }

    /// <summary>What has no prediction, or none to its end, and so no points, or fewer.</summary>
    public ImmutableArray<LeftOut> LeftOut { get; init; } = [];
}
