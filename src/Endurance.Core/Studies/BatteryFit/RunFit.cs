using System.Collections.Immutable;

namespace Endurance.Studies.BatteryFit;

/// <summary>How the fitted battery compares with one run.</summary>
public sealed record RunFit
{
    public required DischargeRun Run { get; init; }

    /// <summary>The fit rests on it; otherwise it was predicted.</summary>
    public required bool IsFitted { get; init; }

    /// <summary>One for each end voltage.</summary>
    public required ImmutableArray<EndTime> Ends { get; init; }

    /// <summary>Volts of the fitted battery at the points of the run, down to its exhaustion.</summary>
    public required ImmutableArray<RunPoint> Modelled { get; init; }

    /// <summary>Root mean square of measured less modelled volts, the first minutes left out; <see langword="null"/>: nothing is left.</summary>
    public required double? RootMeanSquareVolts { get; init; }
}
