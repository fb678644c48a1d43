namespace Endurance.Yaml;

/// <summary>A file of changes to a scenario, by name as in its layouts.</summary>
/// <param name="Name">How diagnostics name the text.</param>
/// <param name="Text">The whole file.</param>
public sealed record OverlayText(string Name, string Text);
