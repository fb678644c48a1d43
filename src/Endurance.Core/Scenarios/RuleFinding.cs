using Endurance.Findings;

namespace Endurance.Scenarios;

/// <summary>A finding about a scenario, with what would have been right.</summary>
/// <param name="Finding">Its part is the path of the offending value, such as <c>feeds.essential_normal.to</c>.</param>
/// <param name="Expected">What was expected; <see langword="null"/> when the message says it all.</param>
/// <param name="Nearest">The known name that was probably meant; <see langword="null"/> when none is near.</param>
public sealed record RuleFinding(Finding Finding, string? Expected = null, string? Nearest = null)
{
    internal static RuleFinding Error(string code, string path, string value, string message, string? expected = null, string? nearest = null) =>
        new(new Finding(code, Severity.Error, path, value, message), expected, nearest);

    internal static RuleFinding Warning(string code, string path, string value, string message, string? expected = null) =>
        new(new Finding(code, Severity.Warning, path, value, message), expected);
}
