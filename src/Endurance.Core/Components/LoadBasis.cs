namespace Endurance.Components;

/// <summary>Where a load's figure came from.</summary>
public enum LoadBasis
{
    /// <summary>The maker's manual.</summary>
    Manual,

    /// <summary>The plate on the equipment.</summary>
    Plate,

    /// <summary>A measurement in the aircraft or on the bench.</summary>
    Measured,
}
