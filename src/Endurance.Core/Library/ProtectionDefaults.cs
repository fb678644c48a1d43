using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Library;

/// <summary>How a breaker or fuse opens when the scenario gives its rating alone.</summary>
/// <param name="Factor">Multiple of the rating that it carries for ever.</param>
/// <param name="TimeConstant">Of its heating.</param>
public sealed record ProtectionDefaults(double Factor, Duration TimeConstant)
{
    /// <summary>How far the numbers can be trusted.</summary>
    public const string Source = Sourced<double>.CommonPractice;

    /// <summary>Opens at twice its rating in 25 s, at ten times in 0.8 s.</summary>
    public static ProtectionDefaults Breaker { get; } = new(1.25, Duration.FromSeconds(50));

    /// <summary>Opens at twice its rating in 1.0 s, at six times in 0.09 s.</summary>
    public static ProtectionDefaults Fuse { get; } = new(1.25, Duration.FromSeconds(2));

    /// <summary>Slower than a fuse: opens at three times its rating in 5.8 s.</summary>
    public static ProtectionDefaults FusibleLink { get; } = new(1.5, Duration.FromSeconds(20));

    public static ProtectionDefaults For(ProtectionKind kind) => kind switch
    {
        ProtectionKind.Breaker => Breaker,
        ProtectionKind.Fuse => Fuse,
        _ => FusibleLink,
    };
}
