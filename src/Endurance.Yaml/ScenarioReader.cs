namespace Endurance.Yaml;

/// <summary>Reads scenario files; every fault is a diagnostic, never an exception.</summary>
public static class ScenarioReader
{
    public static ScenarioReadResult ReadFile(string path) => throw new NotSupportedException(path);

    /// <param name="name">How diagnostics name the text.</param>
    /// <param name="text">The whole scenario.</param>
    public static ScenarioReadResult ReadText(string name, string text) => throw new NotSupportedException(name + text);
}
