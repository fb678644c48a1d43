namespace Endurance.Cli.Commands;

/// <summary>What <c>endurance compare</c> is asked for.</summary>
internal sealed record CompareRequest
{
    public required IReadOnlyList<string> Files { get; init; }

    /// <summary>Files to lay over each scenario and each of its layouts, in order.</summary>
    public required IReadOnlyList<string> Overlays { get; init; }

    /// <summary>Failure case of the picture; <see langword="null"/>: the first.</summary>
    public required string? Case { get; init; }

    /// <summary>One of <see cref="ResultFormat.All"/>.</summary>
    public required string Format { get; init; }

    /// <summary><see langword="null"/>: nothing is written to disk.</summary>
    public required string? OutputFolder { get; init; }

    /// <summary>The first table alone.</summary>
    public required bool IsQuiet { get; init; }

    public required bool ShowsProgress { get; init; }

    public required bool IsForced { get; init; }
}
