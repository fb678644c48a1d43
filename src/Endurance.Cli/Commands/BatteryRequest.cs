using Endurance.Studies.BatteryCurves;

namespace Endurance.Cli.Commands;

/// <summary>What <c>endurance battery</c> is asked for.</summary>
internal sealed record BatteryRequest
{
    public required string File { get; init; }

    /// <summary>Files to lay over the scenario, in order.</summary>
    public required IReadOnlyList<string> Overlays { get; init; }

    /// <summary><see langword="null"/>: every battery of the scenario.</summary>
    public required string? Battery { get; init; }

    public required BatteryCurveOptions Options { get; init; }

    /// <summary>One of <see cref="BatteryOptions.Formats"/>.</summary>
    public required string Format { get; init; }

    /// <summary><see langword="null"/>: nothing is written to disk.</summary>
    public required string? OutputFolder { get; init; }

    public required bool IsForced { get; init; }
}
