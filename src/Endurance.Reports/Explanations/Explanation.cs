namespace Endurance.Reports;

/// <summary>What one word of the program means.</summary>
/// <param name="Word">As it is written: a code, a key, a column head, a term.</param>
/// <param name="Kind">What sort of word it is, such as <c>scenario key</c>.</param>
/// <param name="Text">A few plain sentences.</param>
public sealed record Explanation(string Word, string Kind, string Text);
