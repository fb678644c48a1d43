using System.Collections.Immutable;

namespace Endurance.Simulation;

/// <summary>One recorded signal.</summary>
/// <param name="Name">Name of the part.</param>
/// <param name="Values">In SI units, or a fraction for charge; one for each time of the trace.</param>
public sealed record TraceColumn(string Name, ImmutableArray<double> Values);
