using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Completions;

namespace Endurance.Cli.Completion;

/// <summary>A command as a shell completes it.</summary>
/// <param name="Name">Empty for the program itself.</param>
/// <param name="Description">One sentence, without its full stop.</param>
/// <param name="Options">Those of every command among them.</param>
/// <param name="Kind">What stands beside the options.</param>
/// <param name="Words">For <see cref="WordKind.Listed"/>.</param>
internal sealed record CompletedCommand(string Name, string Description, ImmutableArray<CompletedOption> Options, WordKind Kind, ImmutableArray<string> Words)
{
    /// <summary>The program itself, then its commands in the order of the help.</summary>
    public static ImmutableArray<CompletedCommand> Of(RootCommand root) =>
        [Of(root, "", []), .. root.Subcommands.Where(command => !command.Hidden).Select(command => Of(command, command.Name, root.Options.Where(option => option.Recursive)))];

    private static CompletedCommand Of(Command command, string name, IEnumerable<Option> inherited)
    {
        var options = command.Options.Concat(inherited).Where(option => !option.Hidden).Select(Of).ToImmutableArray();
        if (command.Arguments is not [var argument])
            return new CompletedCommand(name, Sentence(command.Description), options, command.Subcommands.Count > 0 ? WordKind.Listed : WordKind.None, [.. command.Subcommands.Select(one => one.Name)]);
        var words = Listed(argument.CompletionSources);
        return new CompletedCommand(name, Sentence(command.Description), options, KindOf(argument.Name, words), words);
    }

    private static CompletedOption Of(Option option)
    {
        ImmutableArray<string> names = [option.Name, .. option.Aliases.Where(alias => alias.StartsWith('-') && alias is not "-?")];
        if (option.ValueType == typeof(bool) || option.ValueType == typeof(void))
            return new CompletedOption(names, Sentence(option.Description), "", WordKind.None, [], IsRepeatable: false);
        var words = Listed(option.CompletionSources);
        return new CompletedOption(names, Sentence(option.Description), option.HelpName ?? "VALUE", KindOf(option.HelpName ?? "", words), words, option.Arity.MaximumNumberOfValues > 1);
    }

    private static WordKind KindOf(string label, ImmutableArray<string> words)
    {
        if (!words.IsEmpty)
            return WordKind.Listed;
        if (label.Contains("FILE", StringComparison.Ordinal) || label is "LOG")
            return WordKind.File;
        return label is "FOLDER" ? WordKind.Folder : WordKind.Free;
    }

    private static ImmutableArray<string> Listed(IEnumerable<Func<CompletionContext, IEnumerable<CompletionItem>>> sources) =>
        [.. sources.SelectMany(source => source(CompletionContext.Empty)).Select(item => item.Label)];

    private static string Sentence(string? description)
    {
        var text = description ?? "";
        var end = text.IndexOf(". ", StringComparison.Ordinal);
        return end < 0 ? text.TrimEnd('.') : text[..end];
    }
}
