using System.CommandLine;
using System.CommandLine.Parsing;

namespace Endurance.Cli.Arguments;

/// <summary>What is wrong with the command line, a line each, and where to read on.</summary>
internal static class ParseErrorText
{
    public static void Write(ParseResult parse, TextWriter error)
    {
        var command = parse.CommandResult.Command;
        var messages = Unknown(parse, command).ToList();
        if (messages.Count == 0)
            messages.AddRange(parse.Errors.Select(fault => fault.Message).Distinct(StringComparer.Ordinal));

        foreach (var message in messages)
            error.WriteLine($"endurance: {message.ReplaceLineEndings(" ")}");

        error.WriteLine(command is RootCommand ? "Try 'endurance --help'." : $"Try 'endurance {command.Name} --help'.");
    }

    /// <summary>What follows an unknown command or option was meant for it, and would only be noise.</summary>
    private static IEnumerable<string> Unknown(ParseResult parse, Command command)
    {
        var tokens = parse.UnmatchedTokens;
        if (command is RootCommand && tokens.Count > 0 && !tokens[0].StartsWith('-'))
        {
            var commands = command.Subcommands.Select(subcommand => subcommand.Name).ToList();
            return [$"there is no command '{tokens[0]}'; expected {string.Join(", ", commands)}.{NearestWord.Hint(tokens[0], commands)}"];
        }

        var files = parse.CommandResult.Children.OfType<ArgumentResult>().SelectMany(argument => argument.Tokens).Select(token => token.Value);
        var options = tokens.Where(token => token.StartsWith('-')).Concat(files.Where(FileWords.IsOption)).ToList();
        return options.Count > 0
            ? options.Select(token => FileWords.NotKnown(token, KnownWords(command)))
            : tokens.Select(token => $"'{token}' is one word too many.{UnitHint(token)}");
    }

    private static string UnitHint(string token) =>
        token is "s" or "min" or "h" ? $" A quantity stands in quotes or without a space, as in 30{token}." : "";

    private static IEnumerable<string> KnownWords(Command command) =>
        command.Options.Select(option => option.Name).Append("--help");
}
