namespace Endurance.Components;

/// <summary>One of several supplies that a load takes the highest of, through diodes in its box.</summary>
/// <param name="Bus">Name of the bus.</param>
/// <param name="Diode">Conducts from the bus into the load.</param>
public sealed record LoadInput(string Bus, Diode Diode);
