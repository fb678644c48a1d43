namespace Endurance.Components;

/// <summary>What a battery is made of; supplies library values for what a scenario does not give.</summary>
public enum Chemistry
{
    /// <summary>Lead-acid with free electrolyte.</summary>
    Flooded,

    /// <summary>Lead-acid with the electrolyte held in glass mat.</summary>
    Agm,

    /// <summary>Lead-acid with gelled electrolyte.</summary>
    Gel,

    /// <summary>Nickel-cadmium.</summary>
    NiCd,

    /// <summary>Lithium iron phosphate.</summary>
    LiFePO4,
}
