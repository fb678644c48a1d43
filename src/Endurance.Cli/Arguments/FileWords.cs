using System.CommandLine.Parsing;

namespace Endurance.Cli.Arguments;

/// <summary>Names of files that stand without an option. What begins like an option is one that does not exist.</summary>
internal static class FileWords
{
    public static string One(ArgumentResult result) => Several(result)[0];

    public static string[] Several(ArgumentResult result)
    {
        var known = ((CommandResult)result.Parent!).Command.Options.Select(option => option.Name).ToList();
        string[] words = [.. result.Tokens.Select(token => token.Value)];
        foreach (var word in words.Where(IsOption))
            result.AddError(NotKnown(word, known));
        return words;
    }

    public static bool IsOption(string word) => word.StartsWith("--", StringComparison.Ordinal);

    public static string NotKnown(string word, IEnumerable<string> known) => $"'{word}' is not known here.{NearestWord.Hint(word, known)}";
}
