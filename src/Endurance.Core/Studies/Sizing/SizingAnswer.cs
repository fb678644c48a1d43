using System.Collections.Immutable;

namespace Endurance.Studies.Sizing;

/// <summary>The edge that was looked for, and how the scenario stands to it.</summary>
public sealed record SizingAnswer
{
    public required SizingQuestion Question { get; init; }

    /// <summary>The scenario unchanged.</summary>
    public required Trial Present { get; init; }

    public required LimitResult Limit { get; init; }

    /// <summary>The trial of each battery on offer, in the order of the offer; empty unless a capacity is looked for.</summary>
    public required ImmutableArray<Trial> Offers { get; init; }

    /// <summary>The trial whose case and load decide: that at the limit, else the safest that was tried.</summary>
    public Trial Deciding => Limit.AtLimit ?? (Question.Find is SizingFind.Capacity or SizingFind.Health ? Limit.Curve[^1] : Limit.Curve[0]);
}
