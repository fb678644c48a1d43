using System.Collections.Immutable;

namespace Endurance.Reports.Plots;

/// <summary>A picture as data, before anything is drawn.</summary>
public sealed record PlotDescription
{
    public required string Title { get; init; }

    /// <summary>The aircraft or scenario it is about.</summary>
    public required string Subject { get; init; }

    /// <summary>One below the other, sharing the time axis.</summary>
    public required ImmutableArray<PlotPanel> Panels { get; init; }

    /// <summary>In place of panels.</summary>
    public PlotGrid? Grid { get; init; }

    /// <summary>Marked in every panel, explained in the key.</summary>
    public ImmutableArray<PlotEvent> Events { get; init; } = [];

    /// <summary>Sentences at the foot of the key.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];
}
