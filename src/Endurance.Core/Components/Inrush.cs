using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>What a load draws at first, each time it starts.</summary>
/// <param name="Current">Instead of its steady draw; above zero.</param>
/// <param name="Lasts">At least one second.</param>
public sealed record Inrush(Current Current, Duration Lasts);
