namespace Endurance.Simulation;

/// <summary>Why a case could not be computed to its end.</summary>
public enum BreakOffCause
{
    /// <summary>Parts switch each other without end.</summary>
    Chattering,

    /// <summary>Something changes so fast, or is so hard to solve, that the case would take hours to compute.</summary>
    TooStiff,

    /// <summary>The network was not solved to the accuracy that an answer needs.</summary>
    Unsolved,
}
