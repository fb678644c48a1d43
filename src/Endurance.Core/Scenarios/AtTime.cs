using Endurance.Quantities;

namespace Endurance.Scenarios;

/// <summary>An instant of the timeline.</summary>
/// <param name="Time">From the timeline's zero; zero or more.</param>
public sealed record AtTime(Duration Time) : Trigger;
