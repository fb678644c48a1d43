namespace Endurance.Cli.Commands;

/// <summary>What <c>endurance reconcile</c> is asked for.</summary>
internal sealed record ReconcileRequest
{
    public required string File { get; init; }

    /// <summary>Path of the filled card.</summary>
    public required string Card { get; init; }

    /// <summary>Files to lay over the scenario, in order.</summary>
    public required IReadOnlyList<string> Overlays { get; init; }

    /// <summary>Of readings whose card has none; <see langword="null"/>: not given.</summary>
    public required DateOnly? Date { get; init; }

    /// <summary>One of <see cref="ResultFormat.All"/>.</summary>
    public required string Format { get; init; }

    /// <summary><see langword="null"/>: nothing is written to disk.</summary>
    public required string? OutputFolder { get; init; }

    public required bool IsForced { get; init; }
}
