using Endurance.Quantities;

namespace Endurance.Simulation;

/// <summary>Something that happened in a run.</summary>
/// <param name="Time">From the timeline's zero.</param>
/// <param name="Kind">Sort of event.</param>
/// <param name="Part">Name of the part it happened to; empty for the end.</param>
/// <param name="What">The same in words, such as <c>engine_alternator failed</c>.</param>
public sealed record TimedEvent(Duration Time, EventKind Kind, string Part, string What);
