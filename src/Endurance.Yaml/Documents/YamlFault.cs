namespace Endurance.Yaml.Documents;

/// <summary>Says a scanner's complaint in a user's words.</summary>
internal static class YamlFault
{
    public static string InWords(string message)
    {
        if (message.Contains("did not find expected ',' or ']'", StringComparison.Ordinal))
            return "a list that begins with [ does not end with ], or a comma is missing";
        if (message.Contains("did not find expected ',' or '}'", StringComparison.Ordinal))
            return "keys that begin with { do not end with }, or a comma is missing";
        if (message.Contains("Mapping values are not allowed", StringComparison.OrdinalIgnoreCase))
            return "a second `key: value` on one line, or text with `: ` in it that needs quotes";
        if (message.Contains("did not find expected key", StringComparison.OrdinalIgnoreCase))
            return "the indentation does not fit the lines above";
        if (message.Contains("could not find expected ':'", StringComparison.OrdinalIgnoreCase))
            return "a key without its `:`";
        if (message.Contains("unexpected end of stream", StringComparison.OrdinalIgnoreCase))
            return "the text ends inside quotes";
        var plain = message.TrimEnd('.');
        return plain.Length > 0 ? char.ToLowerInvariant(plain[0]) + plain[1..] : "the text cannot be understood";
    }
}
