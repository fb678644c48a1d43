using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Simulation;

namespace Endurance.Studies.LoadAnalysis;

/// <summary>The amp-minute form of one failure case beside the simulation.</summary>
/// <param name="Case">Name of the failure case.</param>
/// <param name="Form">By the load table.</param>
/// <param name="Simulated">Latest approach plus the landing, or without a landing the case's endurance; <see langword="null"/>: not reached within the horizon.</param>
/// <param name="IsNeverCovered">Simulated, no approach reaches the ground with everything required; <paramref name="Simulated"/> is then the endurance.</param>
/// <param name="Why">Sentences that explain the difference.</param>
public sealed record AmpMinuteComparison(string Case, AmpMinutes Form, Duration? Simulated, bool IsNeverCovered, ImmutableArray<string> Why)
{
    /// <summary>Why the case could not be run to its end, so that nothing simulated is known from there on; <see langword="null"/> when it could.</summary>
    public BreakOff? BreakOff { get; init; }
}
