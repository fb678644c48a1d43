using Endurance.Components;

namespace Endurance.Simulation;

/// <summary>A breaker, fuse or fusible link as numbers in SI units.</summary>
/// <param name="Owner">Name of the feed or load it protects.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Feed">Index of its feed; -1 when it is a load's.</param>
/// <param name="Load">Index of its load; -1 when it is a feed's.</param>
/// <param name="Rating">Amperes.</param>
/// <param name="Limit">Square of the multiple of the rating that it carries for ever.</param>
/// <param name="TimeConstant">Seconds.</param>
internal sealed record CompiledBreaker(string Owner, ProtectionKind Kind, int Feed, int Load, double Rating, double Limit, double TimeConstant)
{
    /// <summary>The word for it, as in <c>essential_feed fuse</c>.</summary>
    public string Word => ProtectionWords.Of(Kind);
}
