namespace Endurance.Components;

/// <summary>Conductor temperature that a wire's insulation stands, as the wire tables group it.</summary>
public enum Insulation
{
    /// <summary>105 degC.</summary>
    Rated105,

    /// <summary>150 degC.</summary>
    Rated150,

    /// <summary>200 degC.</summary>
    Rated200,
}
