using System.Collections.Immutable;
using Endurance.Quantities;

namespace Endurance.Scenarios;

/// <summary>What the approach and landing add.</summary>
/// <param name="Connect">Loads switched on for it.</param>
/// <param name="Lasts">From their switching on to the ground; above zero.</param>
public sealed record Landing(ImmutableArray<string> Connect, Duration Lasts);
