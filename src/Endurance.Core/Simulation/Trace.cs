using System.Collections.Immutable;

namespace Endurance.Simulation;

/// <summary>The signals of a run over time. An instant at which something jumps stands twice: before and after.</summary>
public sealed record Trace
{
    /// <summary>Seconds from zero, not falling.</summary>
    public required ImmutableArray<double> Seconds { get; init; }

    /// <summary>Volts of each bus.</summary>
    public required ImmutableArray<TraceColumn> BusVolts { get; init; }

    /// <summary>Amperes of each battery, positive when discharging.</summary>
    public required ImmutableArray<TraceColumn> BatteryAmperes { get; init; }

    /// <summary>State of charge of each battery, 0 to 1.</summary>
    public required ImmutableArray<TraceColumn> BatteryCharge { get; init; }

    /// <summary>Amperes of each feed, positive from <c>from</c> to <c>to</c>.</summary>
    public required ImmutableArray<TraceColumn> FeedAmperes { get; init; }

    /// <summary>Amperes of each load, the mean over its duty.</summary>
    public ImmutableArray<TraceColumn> LoadAmperes { get; init; } = [];
}
