using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Library;

/// <summary>One gauge of <see cref="ProtectionChart"/>.</summary>
/// <param name="Gauge">American wire gauge of copper.</param>
/// <param name="Breaker">Largest breaker; <see langword="null"/>: none listed.</param>
/// <param name="Fuse">Largest fuse.</param>
public sealed record ProtectionChartRow(WireGauge Gauge, Current? Breaker, Current Fuse);
