using System.Collections.Immutable;
using Endurance.Quantities;

namespace Endurance.Studies.Spread;

/// <summary>How the endurance of one case is spread.</summary>
public sealed record SpreadCase
{
    public required string Name { get; init; }

    /// <summary>Endurance of every sample, rising; positive infinity in seconds stands for not lost within the horizon.</summary>
    public required ImmutableArray<double> Seconds { get; init; }

    /// <summary>Samples that could not be run to their end, by cause: their endurance ends there, and they meet no requirement.</summary>
    public required ImmutableArray<BrokenOffSamples> BreakOffs { get; init; }

    /// <summary>Number of those samples.</summary>
    public int BrokenOff => BreakOffs.Sum(samples => samples.Count);

    /// <summary>Samples that met each requirement that applies, in the order of the scenario, with the 95 % interval of the probability.</summary>
    public required ImmutableArray<SpreadRequirement> Requirements { get; init; }

    /// <summary>Endurance that a share of the samples falls short of; <see langword="null"/>: not lost within the horizon.</summary>
    /// <param name="share">0 to 1.</param>
    public Duration? Quantile(double share)
    {
        var seconds = Seconds[Math.Clamp((int)Math.Ceiling(share * Seconds.Length) - 1, 0, Seconds.Length - 1)];
        return double.IsPositiveInfinity(seconds) ? null : Duration.FromSeconds(seconds);
    }
}
