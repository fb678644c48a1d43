using System.CommandLine.Parsing;

namespace Endurance.Cli.Arguments;

/// <summary>Names of files, folders and cases. What begins like an option is one, and the name was forgotten.</summary>
internal static class Word
{
    public static Func<ArgumentResult, string?> For(string option) => result => Checked(result, option, result.Tokens[0].Value);

    public static Func<ArgumentResult, string[]> Several(string option) => result =>
        [.. result.Tokens.Select(token => Checked(result, option, token.Value))];

    private static string Checked(ArgumentResult result, string option, string text)
    {
        if (text.StartsWith("--", StringComparison.Ordinal))
            result.AddError($"{option}: the name is missing before '{text}'.");

        return text;
    }
}
