using Endurance.Components;

namespace Endurance.Library;

/// <summary>Parameters a junction diode of a kind gets when the scenario does not give them.</summary>
/// <param name="Ideality">Emission coefficient.</param>
/// <param name="EnergyGap">Band gap, electronvolt.</param>
/// <param name="SaturationExponent">Temperature exponent of the saturation current, XTI.</param>
public sealed record DiodeDefaults(double Ideality, double EnergyGap, double SaturationExponent)
{
    /// <summary>How far the numbers can be trusted.</summary>
    public const string Source = "from memory, unverified";

    public static DiodeDefaults Silicon { get; } = new(1.8, 1.11, 3);

    public static DiodeDefaults Schottky { get; } = new(1.05, 0.69, 2);

    public static DiodeDefaults For(SemiconductorKind kind) => kind == SemiconductorKind.Silicon ? Silicon : Schottky;
}
