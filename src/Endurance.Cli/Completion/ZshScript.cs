using System.Collections.Immutable;
using System.Text;

namespace Endurance.Cli.Completion;

/// <summary>Completion for zsh: to be sourced, or to lie as <c>_endurance</c> in a folder of <c>fpath</c>.</summary>
internal static class ZshScript
{
    private const string Tail = """
                esac
                ;;
            esac
        }

        if [[ "$funcstack[1]" == "_endurance" ]]; then
            _endurance "$@"
        else
            compdef _endurance endurance
        fi

        """;

    public static string Write(ImmutableArray<CompletedCommand> commands)
    {
        var script = new StringBuilder("#compdef endurance\n# Completion of endurance for zsh.\n\n_endurance() {\n    local curcontext=\"$curcontext\" state line\n    local -a commands\n    commands=(\n");
        foreach (var command in commands.Where(command => command.Name.Length > 0))
            script.Append($"        {Quoted($"{command.Name}:{command.Description}")}\n");
        script.Append("    )\n    _arguments -C");
        foreach (var option in commands[0].Options)
            script.Append(Option(option));
        script.Append(" \\\n        '1:command:->command' \\\n        '*::argument:->argument'\n    case \"$state\" in\n    command)\n        _describe -t commands command commands\n        ;;\n    argument)\n        case \"$words[1]\" in\n");
        foreach (var command in commands.Where(command => command.Name.Length > 0))
        {
            script.Append($"        {command.Name})\n            _arguments");
            foreach (var option in command.Options)
                script.Append(Option(option));
            if (command.Kind != WordKind.None)
                script.Append(" \\\n                ").Append(Quoted($"*:{Label(command.Kind)}:{Offer(command.Kind, command.Words)}"));
            script.Append("\n            ;;\n");
        }

        return script.Append(Tail).ToString();
    }

    private static string Option(CompletedOption option)
    {
        var lines = new StringBuilder();
        var others = option.IsRepeatable ? "*" : $"({string.Join(' ', option.Names)})";
        foreach (var name in option.Names)
        {
            var value = option.Kind == WordKind.None ? "" : $":{option.Label}:{Offer(option.Kind, option.Words)}";
            lines.Append(" \\\n                ").Append(Quoted($"{others}{name}[{Escaped(option.Description)}]{value}"));
        }

        return lines.ToString();
    }

    private static string Label(WordKind kind) => kind == WordKind.File ? "file" : "word";

    private static string Offer(WordKind kind, ImmutableArray<string> words) => kind switch
    {
        WordKind.Listed => $"({string.Join(' ', words)})",
        WordKind.File => "_files",
        WordKind.Folder => "_files -/",
        _ => " ",
    };

    private static string Escaped(string text) => text.Replace("[", "\\[", StringComparison.Ordinal).Replace("]", "\\]", StringComparison.Ordinal).Replace(":", "\\:", StringComparison.Ordinal);

    private static string Quoted(string text) => $"'{text.Replace("'", "'\\''", StringComparison.Ordinal)}'";
}
