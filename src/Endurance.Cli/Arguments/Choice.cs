using System.CommandLine.Parsing;

namespace Endurance.Cli.Arguments;

/// <summary>One word out of a list; numbers and other spellings are refused.</summary>
internal static class Choice
{
    public static Func<ArgumentResult, string> Of(string option, params string[] words) => result =>
    {
        var text = result.Tokens[0].Value;
        if (!words.Contains(text, StringComparer.Ordinal))
            result.AddError($"{option}: '{text}' is not known; expected {string.Join(", ", words[..^1])} or {words[^1]}.{NearestWord.Hint(text, words)}");

        return text;
    };
}
