using System.CommandLine;
using System.CommandLine.Parsing;

namespace Endurance.Cli.Arguments;

/// <summary>One word out of a list; numbers and other spellings are refused.</summary>
internal static class Choice
{
    /// <summary>An option that takes one of <paramref name="words"/>, which shells can complete.</summary>
    public static Option<string> Option(string name, string helpName, string description, params string[] words)
    {
        var option = new Option<string>(name) { HelpName = helpName, Description = description, CustomParser = Of(name, words) };
        option.CompletionSources.Add(words);
        return option;
    }

    public static Func<ArgumentResult, string> Of(string name, params string[] words) => result =>
    {
        var text = result.Tokens[0].Value;
        if (!words.Contains(text, StringComparer.Ordinal))
            result.AddError($"{name}: '{text}' is not known; expected {string.Join(", ", words[..^1])} or {words[^1]}.{NearestWord.Hint(text, words)}");

        return text;
    };
}
