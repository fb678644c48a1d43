namespace Endurance.Benchmarks;

/// <summary>One engine at one setting on one network.</summary>
/// <param name="Engine">Its name.</param>
/// <param name="Setting">In the engine's own terms.</param>
/// <param name="Minutes">Its minute of the cutoff.</param>
/// <param name="Microseconds">Processor time of a run.</param>
internal sealed record Measurement(string Engine, string Setting, double Minutes, double Microseconds);
