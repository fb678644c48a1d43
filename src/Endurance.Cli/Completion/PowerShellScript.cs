using System.Collections.Immutable;
using System.Text;

namespace Endurance.Cli.Completion;

/// <summary>Completion for PowerShell 5.1 and newer; where it offers nothing, PowerShell itself completes file names.</summary>
internal static class PowerShellScript
{
    private const string Head = """
        # Completion of endurance for PowerShell.

        Register-ArgumentCompleter -Native -CommandName endurance -ScriptBlock {
            param($wordToComplete, $commandAst, $cursorPosition)
            $before = @($commandAst.CommandElements | Where-Object { $_.Extent.EndOffset -lt $cursorPosition } | ForEach-Object { $_.ToString() })
            $previous = $before[-1]
            $command = $before | Select-Object -Skip 1 | Where-Object { -not $_.StartsWith('-') } | Select-Object -First 1

        """;

    private const string Tail = """
            $offered | Where-Object { $_ -like "$wordToComplete*" } | ForEach-Object {
                [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_)
            }
        }

        """;

    public static string Write(ImmutableArray<CompletedCommand> commands)
    {
        var script = new StringBuilder(Head).Append("    $offered = switch -CaseSensitive (\"$command $previous\") {\n");
        foreach (var command in commands)
        {
            foreach (var option in command.Options.Where(option => option.Kind != WordKind.None))
            {
                foreach (var name in option.Names)
                    script.Append($"        '{command.Name} {name}' {{ {List(option.Words)}; break }}\n");
            }
        }

        script.Append("        default {\n            switch -CaseSensitive (\"$command\") {\n");
        foreach (var command in commands)
        {
            var options = command.Options.SelectMany(option => option.Names);
            script.Append($"                '{command.Name}' {{ if ($wordToComplete.StartsWith('-')) {{ {List(options)} }} else {{ {List(command.Words)} }} }}\n");
        }

        return script.Append("            }\n        }\n    }\n").Append(Tail).ToString();
    }

    private static string List(IEnumerable<string> words) => $"@({string.Join(", ", words.Select(word => $"'{word.Replace("'", "''", StringComparison.Ordinal)}'"))})";
}
