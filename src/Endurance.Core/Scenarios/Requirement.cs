using System.Collections.Immutable;
using Endurance.Quantities;

namespace Endurance.Scenarios;

/// <summary>Loads, or one bus, that must last a time from the timeline's zero.</summary>
public sealed record Requirement
{
    /// <summary>The case it applies to; <see langword="null"/>: every case.</summary>
    public string? Case { get; init; }

    /// <summary>Names of loads; empty when <see cref="Bus"/> is given.</summary>
    public ImmutableArray<string> Loads { get; init; } = [];

    /// <summary>How the file named the loads, such as <c>essential</c>; for the reader of a report.</summary>
    public string? LoadsLabel { get; init; }

    /// <summary>A bus with a cutoff; <see langword="null"/> when <see cref="Loads"/> are given.</summary>
    public string? Bus { get; init; }

    /// <summary>Above zero, at most the horizon.</summary>
    public required Duration Endure { get; init; }

    /// <summary>Judge the last loss that is never made good, instead of the first.</summary>
    public bool DipsAllowed { get; init; }

    public bool AppliesTo(FailureCase failureCase) => Case is null || string.Equals(Case, failureCase.Name, StringComparison.Ordinal);
}
