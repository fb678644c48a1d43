using System.Collections.Immutable;

namespace Endurance.Yaml.Documents;

/// <summary>A scenario's text, or an overlay's, by lines.</summary>
internal sealed class SourceText(string name, string text, int index = 0)
{
    private static readonly string[] LineEnds = ["\r\n", "\n", "\r"];

    /// <summary>As the user named it.</summary>
    public string Name { get; } = name;

    public string Text { get; } = text;

    /// <summary>As in <see cref="SourceSpan.Source"/>.</summary>
    public int Index { get; } = index;

    public ImmutableArray<string> Lines { get; } = [.. text.Split(LineEnds, StringSplitOptions.None)];

    /// <summary>The line without its end; empty when there is no such line.</summary>
    public string Line(int number) => number >= 1 && number <= Lines.Length ? Lines[number - 1] : "";
}
