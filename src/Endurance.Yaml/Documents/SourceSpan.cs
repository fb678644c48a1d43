namespace Endurance.Yaml.Documents;

/// <summary>A run of characters on one line of a text.</summary>
/// <param name="Line">1 for the first line; 0 for a fault without a place.</param>
/// <param name="Column">1 for the first character; 0 for a fault without a place.</param>
/// <param name="Length">At least 1.</param>
/// <param name="Source">0 for the scenario itself, from 1 for the overlays laid over it, in order.</param>
internal readonly record struct SourceSpan(int Line, int Column, int Length, int Source = 0)
{
    /// <summary>The file as a whole.</summary>
    public static SourceSpan Nowhere => new(0, 0, 1);
}
