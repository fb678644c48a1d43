using Endurance.Quantities;

namespace Endurance.Cli.Commands;

/// <summary>What <c>endurance run</c> is asked for.</summary>
internal sealed record RunRequest
{
    public required string File { get; init; }

    /// <summary>Files to lay over the scenario, in order.</summary>
    public required IReadOnlyList<string> Overlays { get; init; }

    /// <summary><see langword="null"/>: as drawn.</summary>
    public required string? Layout { get; init; }

    /// <summary>Names of failure cases; empty for all.</summary>
    public required IReadOnlyList<string> Cases { get; init; }

    /// <summary>One of <see cref="ResultFormat.All"/>.</summary>
    public required string Format { get; init; }

    /// <summary><see langword="null"/>: nothing is written to disk.</summary>
    public required string? OutputFolder { get; init; }

    public required Duration SampleInterval { get; init; }

    /// <summary>See <see cref="Simulation.SimulationOptions.Tolerance"/>.</summary>
    public required double Tolerance { get; init; }

    public required bool IsQuiet { get; init; }

    public required bool HasPlots { get; init; }

    public required bool IsForced { get; init; }
}
