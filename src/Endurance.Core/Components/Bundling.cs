namespace Endurance.Components;

/// <summary>How a wire sheds its heat.</summary>
public enum Bundling
{
    /// <summary>Laced up with others.</summary>
    InBundle,

    /// <summary>On its own in free air.</summary>
    FreeAir,
}
