using Endurance.Quantities;

namespace Endurance.Simulation;

/// <summary>Numerical settings of a run; none of them is physical.</summary>
public sealed record SimulationOptions
{
    /// <summary>Largest error of a state of charge in one step; 1e-12 to 1e-2.</summary>
    public double Tolerance { get; init; } = 1e-8;

    /// <summary>Spacing of the recorded trace, above zero; <see langword="null"/>: no trace is kept.</summary>
    public Duration? SampleInterval { get; init; }

    /// <summary>Ends the run as soon as the rest of it can change no verdict and no endurance; later losses and what the batteries give then are not known.</summary>
    public bool EndsWhenDecided { get; init; }
}
