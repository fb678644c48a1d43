namespace Endurance.Reports.Diagram;

/// <summary>Words of a diagram, cut to a length that its columns can hold.</summary>
internal static class DiagramLabel
{
    /// <summary>Widest character of a monospaced font at 12 px, with a little to spare.</summary>
    public const double CharacterWidth = 7.5;

    private const int Longest = 26;

    public static string Of(string text) => VisibleText.Shortened(text, Longest);

    /// <summary>Pixels that a label takes; characters of East Asian scripts take two places.</summary>
    public static double Width(string text) => text.EnumerateRunes().Sum(rune => rune.Value < 0x1100 ? 1.0 : 2.0) * CharacterWidth;
}
