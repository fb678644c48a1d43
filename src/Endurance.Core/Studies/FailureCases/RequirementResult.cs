using Endurance.Quantities;
using Endurance.Scenarios;

namespace Endurance.Studies.FailureCases;

/// <summary>One requirement judged in one case.</summary>
public sealed record RequirementResult
{
    public required Requirement Requirement { get; init; }

    /// <summary><see langword="null"/>: not lost within the horizon.</summary>
    public required Duration? Endurance { get; init; }

    /// <summary>Pass or fail.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>Name of the load or bus lost first, or <c>shed</c>; <see langword="null"/> when nothing was lost.</summary>
    public required string? LimitedBy { get; init; }
}
