namespace Endurance.Simulation;

/// <summary>How a load draws, as numbers.</summary>
internal enum LoadLaw
{
    Current,
    Conductance,
    Power,
}
