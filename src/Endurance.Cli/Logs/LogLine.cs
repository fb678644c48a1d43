using Endurance.Yaml.Documents;

namespace Endurance.Cli.Logs;

/// <summary>A line of a log as it stands in the file, to point into it.</summary>
internal readonly record struct LogLine(int Number, string Text, char Separator)
{
    public SourceSpan Whole => new(Number, 1, Math.Max(1, Text.Length));

    /// <summary>Place of a cell, quotes and blanks around it aside; the end of the line when there is no such cell.</summary>
    public SourceSpan Cell(int index)
    {
        var start = 0;
        for (var cell = 0; cell < index && start <= Text.Length; cell++)
            start = End(start) + 1;
        if (start > Text.Length)
            return new SourceSpan(Number, Text.Length + 1, 1);
        var text = Text[start..End(start)];
        var trimmed = text.Trim(' ', '"');
        var lead = trimmed.Length == 0 ? 0 : text.IndexOf(trimmed, StringComparison.Ordinal);
        return new SourceSpan(Number, start + lead + 1, Math.Max(1, trimmed.Length));
    }

    private int End(int from)
    {
        var isQuoted = false;
        for (var i = from; i < Text.Length; i++)
        {
            if (Text[i] == '"')
                isQuoted = !isQuoted;
            else if (Text[i] == Separator && !isQuoted)
                return i;
        }

        return Text.Length;
    }
}
