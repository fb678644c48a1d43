using System.Collections.Immutable;

namespace Endurance.Studies.Sizing;

/// <summary>The value at which a scenario begins, or ceases, to meet its requirements.</summary>
public sealed record LimitResult
{
    /// <summary>In the SI unit of what is varied; <see langword="null"/>: no value tried passes.</summary>
    public required double? Limit { get; init; }

    /// <summary>Every value tried passes, so the limit lies beyond the range.</summary>
    public required bool IsBeyondRange { get; init; }

    /// <summary>A value further on fails, or passes, again: the answer is the first crossing from the safe end, and not the whole truth.</summary>
    public required bool IsNotMonotonic { get; init; }

    /// <summary>Values tried at which a case could not be run to its end; they count as failing.</summary>
    public int BrokenOff => Curve.Count(trial => trial.BreakOff is not null);

    /// <summary>The trial at the limit; <see langword="null"/> without a limit.</summary>
    public required Trial? AtLimit { get; init; }

    /// <summary>The trials of the scan, by rising value.</summary>
    public required ImmutableArray<Trial> Curve { get; init; }
}
