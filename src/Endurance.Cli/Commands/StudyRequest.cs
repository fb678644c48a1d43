namespace Endurance.Cli.Commands;

/// <summary>What every study is asked for.</summary>
internal sealed record StudyRequest
{
    public required string File { get; init; }

    /// <summary>Files to lay over the scenario, in order.</summary>
    public required IReadOnlyList<string> Overlays { get; init; }

    /// <summary>One of <see cref="ResultFormat.All"/>.</summary>
    public required string Format { get; init; }

    /// <summary><see langword="null"/>: nothing is written to disk.</summary>
    public required string? OutputFolder { get; init; }

    public required bool IsQuiet { get; init; }

    /// <summary>Where the screen can show it.</summary>
    public required bool ShowsProgress { get; init; }

    public required bool IsForced { get; init; }
}
