namespace Endurance.Fuzz;

/// <summary>Makes the text of a failure small enough to read: leaves out lines and entries as long as it fails in the same way.</summary>
internal static class Shrinker
{
    /// <param name="text">Fails.</param>
    /// <param name="check">Throws for a text that fails.</param>
    public static string Shrink(string text, Action<string> check)
    {
        var kind = Fault(text, check);
        for (var before = ""; !string.Equals(before, text, StringComparison.Ordinal);)
        {
            before = text;
            foreach (var (start, length) in Pieces(text).Reverse())
            {
                if (start + length > text.Length)
                    continue;
                var shorter = text.Remove(start, length);
                if (string.Equals(Fault(shorter, check), kind, StringComparison.Ordinal))
                    text = shorter;
            }
        }

        return text;
    }

    /// <summary>What went wrong, without its numbers; empty when nothing did.</summary>
    private static string Fault(string text, Action<string> check)
    {
        try
        {
            check(text);
            return "";
        }
        catch (Exception fault)
        {
            return fault.GetType().Name + string.Concat(fault.Message.Where(char.IsLetter).Take(12));
        }
    }

    /// <summary>Whole lines, and within lines each entry of a flow mapping or sequence with the comma before or after it.</summary>
    private static IEnumerable<(int Start, int Length)> Pieces(string text)
    {
        for (int start = 0, end; start < text.Length; start = end + 1)
        {
            end = text.IndexOf('\n', start);
            if (end < 0)
                end = text.Length - 1;
            yield return (start, end + 1 - start);
            for (var at = start; at < end; at++)
            {
                if (text[at] is '{' or ',')
                    yield return (at + (text[at] == '{' ? 1 : 0), EntryLength(text, at, end));
            }
        }
    }

    private static int EntryLength(string text, int from, int end)
    {
        var depth = 0;
        var at = from + 1;
        for (; at < end && !(depth == 0 && (text[at] is ',' or '}' or ']')); at++)
            depth += text[at] is '{' or '[' ? 1 : text[at] is '}' or ']' ? -1 : 0;
        var isFirst = text[from] == '{';
        return at - from - (isFirst ? 1 : 0) + (isFirst && at < end && text[at] == ',' ? 1 : 0);
    }
}
