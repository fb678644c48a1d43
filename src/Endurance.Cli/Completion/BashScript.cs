using System.Collections.Immutable;
using System.Text;

namespace Endurance.Cli.Completion;

/// <summary>Completion for bash 3.2 and newer.</summary>
internal static class BashScript
{
    private const string Head = """
        # Completion of endurance for bash.

        _endurance() {
            local word="${COMP_WORDS[COMP_CWORD]}" previous="${COMP_WORDS[COMP_CWORD-1]}" command="" i
            local IFS=$'\n'
            COMPREPLY=()

            # bash parts --format=json into three words.
            if [[ "$word" == "=" ]]; then
                word=""
            elif [[ "$previous" == "=" ]]; then
                previous="${COMP_WORDS[COMP_CWORD-2]}"
            fi

            for ((i = 1; i < COMP_CWORD; i++)); do
                case "${COMP_WORDS[i]}" in
                    -*) ;;
                    *) command="${COMP_WORDS[i]}"; break ;;
                esac
            done

        """;

    private const string Tail = """
        }

        complete -F _endurance endurance

        """;

    public static string Write(ImmutableArray<CompletedCommand> commands)
    {
        var script = new StringBuilder(Head).Append('\n');
        script.Append("    case \"$command $previous\" in\n");
        foreach (var command in commands)
        {
            foreach (var option in command.Options.Where(option => option.Kind != WordKind.None))
                script.Append($"        {string.Join('|', option.Names.Select(name => $"\"{command.Name} {name}\""))}) {Offer(option.Kind, option.Words)}; return ;;\n");
        }

        script.Append("    esac\n\n    case \"$command\" in\n");
        foreach (var command in commands)
        {
            script.Append($"        \"{command.Name}\")\n");
            script.Append($"            if [[ \"$word\" == -* ]]; then {Offer(WordKind.Listed, [.. command.Options.SelectMany(option => option.Names)])}\n");
            script.Append($"            else {Offer(command.Kind, command.Words)}; fi ;;\n");
        }

        return script.Append("    esac\n").Append(Tail).ToString();
    }

    private static string Offer(WordKind kind, ImmutableArray<string> words) => kind switch
    {
        WordKind.Listed => $"COMPREPLY=($(compgen -W $'{string.Join("\\n", words)}' -- \"$word\"))",
        WordKind.File => "COMPREPLY=($(compgen -f -- \"$word\")); compopt -o filenames 2> /dev/null",
        WordKind.Folder => "COMPREPLY=($(compgen -d -- \"$word\")); compopt -o filenames 2> /dev/null",
        _ => ":",
    };
}
