namespace Endurance.Components;

/// <summary>Junction material, which decides the temperature law and the default ideality.</summary>
public enum SemiconductorKind
{
    Silicon,
    Schottky,
}
