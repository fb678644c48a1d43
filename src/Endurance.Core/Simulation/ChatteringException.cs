namespace Endurance.Simulation;

/// <summary>Parts of a scenario switch each other without end at one instant.</summary>
/// <param name="chatter">Which parts, and when.</param>
/// <param name="failureCase">Name of the failure case that was run.</param>
public sealed class ChatteringException(Chatter chatter, string failureCase = "") : Exception(chatter.Told(failureCase))
{
    public Chatter Chatter { get; } = chatter;
}
