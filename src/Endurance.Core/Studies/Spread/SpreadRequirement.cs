using Endurance.Scenarios;

namespace Endurance.Studies.Spread;

/// <summary>How often a requirement was met.</summary>
/// <param name="Requirement">The requirement.</param>
/// <param name="Met">Samples that met it.</param>
/// <param name="Share">That over all samples.</param>
/// <param name="Interval">95 % interval of the probability.</param>
public sealed record SpreadRequirement(Requirement Requirement, int Met, double Share, WilsonInterval Interval);
