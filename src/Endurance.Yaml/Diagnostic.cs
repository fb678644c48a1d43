using Endurance.Findings;

namespace Endurance.Yaml;

/// <summary>Something wrong, or doubtful, at a place in a scenario file.</summary>
public sealed record Diagnostic
{
    /// <summary>Stable identifier in kebab-case, such as <c>unknown-key</c>.</summary>
    public required string Code { get; init; }

    /// <summary><see cref="Severity.Error"/> or <see cref="Severity.Warning"/>.</summary>
    public required Severity Severity { get; init; }

    /// <summary>As the user named it.</summary>
    public required string File { get; init; }

    /// <summary>1 for the first line; 0 when the fault has no place inside the file.</summary>
    public required int Line { get; init; }

    /// <summary>1 for the first character; 0 when the fault has no place inside the file.</summary>
    public required int Column { get; init; }

    /// <summary>Number of characters to underline; at least 1.</summary>
    public int Length { get; init; } = 1;

    /// <summary>The whole source line, without its line end; empty when the fault has no place inside the file.</summary>
    public string SourceLine { get; init; } = "";

    /// <summary>What is wrong, with the offending text.</summary>
    public required string Message { get; init; }

    /// <summary>The layout in which it arises; <see langword="null"/>: in the scenario as drawn too.</summary>
    public string? Layout { get; init; }

    /// <summary>What was expected; <see langword="null"/> when the message says it all.</summary>
    public string? Expected { get; init; }

    /// <summary>The nearest known name; <see langword="null"/> when none is near.</summary>
    public string? Nearest { get; init; }
}
