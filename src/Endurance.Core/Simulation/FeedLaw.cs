namespace Endurance.Simulation;

/// <summary>What limits the current of a feed besides its conductors.</summary>
internal enum FeedLaw
{
    Conductor,
    JunctionDiode,
    IdealDiode,
}
