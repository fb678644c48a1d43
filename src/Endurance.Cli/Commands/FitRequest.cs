using Endurance.Studies.BatteryFit;

namespace Endurance.Cli.Commands;

/// <summary>What <c>endurance fit</c> is asked for.</summary>
internal sealed record FitRequest
{
    public required string File { get; init; }

    public required BatteryFitOptions Options { get; init; }

    /// <summary>One of <see cref="FitOptions.Formats"/>.</summary>
    public required string Format { get; init; }

    /// <summary><see langword="null"/>: nothing is written to disk.</summary>
    public required string? OutputFolder { get; init; }

    public required bool IsForced { get; init; }
}
