using System.Collections.Immutable;
using System.Text;

namespace Endurance.Cli.Completion;

/// <summary>Completion for fish 3 and newer.</summary>
internal static class FishScript
{
    public static string Write(ImmutableArray<CompletedCommand> commands)
    {
        var script = new StringBuilder("# Completion of endurance for fish.\n\ncomplete -c endurance -f\n");
        foreach (var command in commands)
        {
            var condition = command.Name.Length == 0 ? "__fish_use_subcommand" : $"'__fish_seen_subcommand_from {command.Name}'";
            if (command.Name.Length > 0)
                script.Append($"\ncomplete -c endurance -n __fish_use_subcommand -a {command.Name} -d {Quoted(command.Description)}\n");
            if (command.Kind == WordKind.File)
                script.Append($"complete -c endurance -n {condition} -F\n");
            else if (command.Kind == WordKind.Listed && command.Name.Length > 0)
                script.Append($"complete -c endurance -n {condition} -a {Quoted(string.Join(' ', command.Words))}\n");
            foreach (var option in command.Options)
                script.Append($"complete -c endurance -n {condition}{string.Concat(option.Names.Select(Name))}{Offer(option)} -d {Quoted(option.Description)}\n");
        }

        return script.ToString();
    }

    private static string Name(string name) => name.StartsWith("--", StringComparison.Ordinal) ? $" -l {name[2..]}" : $" -s {name[1..]}";

    private static string Offer(CompletedOption option) => option.Kind switch
    {
        WordKind.None => "",
        WordKind.Listed => $" -x -a {Quoted(string.Join(' ', option.Words))}",
        WordKind.File => " -r -F",
        WordKind.Folder => " -x -a '(__fish_complete_directories)'",
        _ => " -x",
    };

    private static string Quoted(string text) => $"'{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("'", "\\'", StringComparison.Ordinal)}'";
}
