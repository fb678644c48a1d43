namespace Endurance.Simulation;

/// <summary>How hard a run worked.</summary>
/// <param name="AcceptedSteps">Integration steps kept, cut ones included.</param>
/// <param name="RejectedSteps">Integration steps thrown away for their error.</param>
/// <param name="NetworkSolves">Operating points found.</param>
/// <param name="NewtonIterations">Linear solves.</param>
public sealed record SimulationStatistics(int AcceptedSteps, int RejectedSteps, int NetworkSolves, int NewtonIterations);
