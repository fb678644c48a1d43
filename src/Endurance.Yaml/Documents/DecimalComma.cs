namespace Endurance.Yaml.Documents;

/// <summary>Puts together what a flow collection has split at a decimal comma, so that <c>5,5 A</c> is reported as what it is.</summary>
internal static class DecimalComma
{
    /// <returns>The two as one scalar, or <see langword="null"/> when they are not digits, a comma and more digits without a space.</returns>
    public static ScalarNode? Joined(SourceText source, DocumentNode before, DocumentNode after)
    {
        if (before is not ScalarNode { IsPlain: true } whole || after is not ScalarNode { IsPlain: true } fraction)
            return null;
        var commaAt = whole.Span.Column + whole.Span.Length;
        var touches = whole.Span.Line == fraction.Span.Line && fraction.Span.Column == commaAt + 1;
        var line = source.Line(whole.Span.Line);
        if (!touches || commaAt > line.Length || line[commaAt - 1] != ',' || !IsWholeNumber(whole.Value) || !char.IsAsciiDigit(fraction.Value.FirstOrDefault()))
            return null;
        var span = whole.Span with { Length = fraction.Span.Column + fraction.Span.Length - whole.Span.Column };
        return new ScalarNode(span, $"{whole.Value},{fraction.Value}", IsPlain: true);
    }

    private static bool IsWholeNumber(string text) => text.TrimStart('-', '+') is { Length: > 0 } digits && digits.All(char.IsAsciiDigit);
}
