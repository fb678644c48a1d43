namespace Endurance.Yaml.Documents;

/// <summary>Says a scanner's complaint in a user's words.</summary>
internal static class YamlFault
{
    /// <summary>Whether a bracket or a comma is missing.</summary>
    public static bool IsUnclosed(string message) => message.Contains("did not find expected ','", StringComparison.Ordinal);

    public static string InWords(string message)
    {
        if (message.Contains("Mapping values are not allowed", StringComparison.OrdinalIgnoreCase) || message.Contains("found invalid mapping", StringComparison.Ordinal))
            return "a second `key: value` on one line, or text with `: ` in it that needs quotes";
        if (message.Contains("did not find expected key", StringComparison.OrdinalIgnoreCase))
            return "the indentation does not fit the lines above";
        if (message.Contains("could not find expected ':'", StringComparison.OrdinalIgnoreCase))
            return "a key without its `:`";
        if (message.Contains("quoted scalar", StringComparison.OrdinalIgnoreCase) && (message.Contains("end of stream", StringComparison.Ordinal) || message.Contains("wrong indentation", StringComparison.Ordinal)))
            return "the quotes that open here are not closed";
        var plain = message.TrimEnd('.');
        return plain.Length > 0 ? char.ToLowerInvariant(plain[0]) + plain[1..] : "the text cannot be understood";
    }
}
