using Endurance.Simulation;

namespace Endurance.Studies.Spread;

/// <summary>Samples of a case that could not be computed to their end for the same kind of cause.</summary>
/// <param name="Count">At least 1.</param>
/// <param name="First">That of the first sample.</param>
public sealed record BrokenOffSamples(int Count, BreakOff First);
