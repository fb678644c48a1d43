using System.Text;

namespace Endurance.Reports.Plots;

/// <summary>Splits a line that reads from left to right into pieces of one direction, since a shaper takes one direction at a time.</summary>
/// <remarks>The part of the Unicode Bidirectional Algorithm (UAX 9) that names of parts need: no nesting, and neutral characters follow the line unless both neighbours read from right to left.</remarks>
internal static class TextRuns
{
    public static IReadOnlyList<string> Of(string text)
    {
        var runs = new List<string>();
        var run = new StringBuilder();
        var neutral = new StringBuilder();
        var isRunRightToLeft = false;
        foreach (var rune in text.EnumerateRunes())
        {
            var isRightToLeft = IsRightToLeft(rune);
            if (isRunRightToLeft && !isRightToLeft && !Rune.IsLetterOrDigit(rune) && rune.Value is not '…')
            {
                neutral.Append(rune.ToString());
                continue;
            }

            if (isRightToLeft != isRunRightToLeft)
            {
                Close(runs, run);
                isRunRightToLeft = isRightToLeft;
            }

            run.Append(neutral).Append(rune.ToString());
            neutral.Clear();
        }

        Close(runs, run);
        Close(runs, neutral);
        return runs;
    }

    private static void Close(List<string> runs, StringBuilder run)
    {
        if (run.Length > 0)
            runs.Add(run.ToString());
        run.Clear();
    }

    /// <summary>Blocks of Hebrew, Arabic and their relatives, by the default directions of UAX 9.</summary>
    private static bool IsRightToLeft(Rune rune) => rune.Value is
        (>= 0x0590 and <= 0x08FF) or (>= 0xFB1D and <= 0xFDFF) or (>= 0xFE70 and <= 0xFEFF) or (>= 0x10800 and <= 0x10FFF) or (>= 0x1E800 and <= 0x1EFFF);
}
