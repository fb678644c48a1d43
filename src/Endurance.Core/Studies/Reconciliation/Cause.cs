using System.Collections.Immutable;

namespace Endurance.Studies.Reconciliation;

/// <summary>What a pattern of readings points at.</summary>
/// <param name="Fault">The first of those that fit.</param>
/// <param name="Others">What fits the same readings as well.</param>
/// <param name="Explained">Readings out of tolerance that are as they would be with the fault.</param>
internal sealed record Cause(Fault Fault, ImmutableArray<Fault> Others, ImmutableArray<ComparedReading> Explained);
