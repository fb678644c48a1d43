using System.CommandLine;
using Endurance.Cli.Arguments;
using Endurance.Cli.Completion;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance completion SHELL</c>: a script by which a shell completes commands, options, values and file names.</summary>
internal static class CompletionCommand
{
    private static readonly string[] Shells = ["bash", "zsh", "fish", "powershell"];

    public static Command Create()
    {
        var shell = new Argument<string>("SHELL")
        {
            HelpName = "SHELL",
            Description = $"{string.Join(", ", Shells[..^1])} or {Shells[^1]}.",
            CustomParser = Choice.Of("SHELL", Shells),
        };
        shell.CompletionSources.Add(Shells);
        var command = new Command("completion", "Prints a script by which a shell completes commands, options and file names.") { shell };
        command.Answers((parse, output, _, _) =>
        {
            output.Write(Script(parse.GetRequiredValue(shell), (RootCommand)parse.RootCommandResult.Command));
            return ExitCode.Met;
        });
        return command;
    }

    private static string Script(string shell, RootCommand root)
    {
        var commands = CompletedCommand.Of(root);
        return shell switch
        {
            "bash" => BashScript.Write(commands),
            "zsh" => ZshScript.Write(commands),
            "fish" => FishScript.Write(commands),
            _ => PowerShellScript.Write(commands),
        };
    }
}
