using System.Collections.Immutable;
using Endurance.Studies.FailureCases;

namespace Endurance.Studies.Sweeps;

/// <summary>All cases at one value of the swept quantity.</summary>
/// <param name="Value">In the quantity's SI unit.</param>
/// <param name="Cases">In the order of the scenario.</param>
public sealed record SweepPoint(double Value, ImmutableArray<CaseResult> Cases);
