using System.CommandLine;
using Endurance.Cli.Arguments;
using Endurance.Reports;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance explain WORD</c>: what a finding, a key or a column head means.</summary>
internal static class ExplainCommand
{
    public static Command Create(Screen screen)
    {
        var words = new Argument<string[]>("WORD")
        {
            Arity = ArgumentArity.ZeroOrMore,
            HelpName = "WORD",
            Description = "A code of a finding or diagnostic, a key of the scenario, or a column head; without it, all of them are listed.",
        };
        words.CompletionSources.Add(_ => Glossary.All.Select(explanation => explanation.Word).Where(word => !word.Contains(' ', StringComparison.Ordinal)).Distinct(StringComparer.Ordinal));
        var command = new Command("explain", "Says in plain words what a code, a key or a column head means.") { words };
        command.Answers((parse, output, error, _) => Execute(string.Join(' ', parse.GetValue(words) ?? []), screen, output, error));
        return command;
    }

    private static int Execute(string word, Screen screen, TextWriter output, TextWriter error)
    {
        if (word.Length == 0)
        {
            foreach (var kind in Glossary.All.GroupBy(explanation => explanation.Kind, StringComparer.Ordinal))
                Write(output, $"{kind.Key}:", string.Join(", ", kind.Select(explanation => explanation.Word)), screen.Width);
            return ExitCode.Met;
        }

        var found = Glossary.Find(word);
        if (found.IsEmpty)
        {
            error.WriteLine($"endurance: there is nothing about '{word}' to explain.{NearestWord.Hint(word, Glossary.All.Select(explanation => explanation.Word))} Without a word, all are listed.");
            return ExitCode.Usage;
        }

        foreach (var explanation in found)
            Write(output, $"{explanation.Word} ({explanation.Kind})", explanation.Text, screen.Width);
        return ExitCode.Met;
    }

    private static void Write(TextWriter output, string heading, string text, int width)
    {
        output.WriteLine(heading);
        var line = " ";
        foreach (var word in text.Split(' '))
        {
            if (line.Length + 1 + word.Length > width)
            {
                output.WriteLine(line);
                line = " ";
            }

            line += " " + word;
        }

        output.WriteLine(line);
    }
}
