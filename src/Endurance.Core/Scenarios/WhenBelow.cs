using Endurance.Quantities;

namespace Endurance.Scenarios;

/// <summary>A bus that has been below a voltage for a while. Armed from zero, fires once a case.</summary>
/// <param name="Bus">Name of the bus.</param>
/// <param name="Below">Threshold; above zero.</param>
/// <param name="For">Time it must stay below, starting over once the bus has exceeded the threshold by the hysteresis; zero or more.</param>
public sealed record WhenBelow(string Bus, Voltage Below, Duration For) : Trigger;
