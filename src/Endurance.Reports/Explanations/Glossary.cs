using System.Collections.Immutable;

namespace Endurance.Reports;

/// <summary>Explains every code, key, column head and term that the program uses.</summary>
public static class Glossary
{
    /// <summary>Kind by kind, each in alphabetical order.</summary>
    public static ImmutableArray<Explanation> All { get; } = Read();

    /// <summary>Everything a word means; capitals, spaces, hyphens and underscores make no difference. Empty when it is not known.</summary>
    public static ImmutableArray<Explanation> Find(string word) =>
        [.. All.Where(explanation => string.Equals(Plain(explanation.Word), Plain(word), StringComparison.OrdinalIgnoreCase))];

    private static string Plain(string word) => word.Trim().Replace('-', ' ').Replace('_', ' ');

    private static ImmutableArray<Explanation> Read()
    {
        using var stream = typeof(Glossary).Assembly.GetManifestResourceStream("explanations.txt")
            ?? throw new InvalidOperationException("The explanations are not embedded.");
        using var reader = new StreamReader(stream);
        var entries = ImmutableArray.CreateBuilder<Explanation>();
        var kind = "";
        while (reader.ReadLine() is { } line)
        {
            if (line.StartsWith('#'))
                continue;
            if (line.StartsWith('['))
                kind = line.Trim('[', ']');
            else if (line.Split(" | ", 2) is [var word, var text])
                entries.Add(new Explanation(word, kind, text));
        }

        return entries.ToImmutable();
    }
}
