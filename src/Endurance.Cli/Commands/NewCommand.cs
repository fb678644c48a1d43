using System.CommandLine;
using Endurance.Cli.Arguments;
using Endurance.Cli.Output;
using Endurance.Yaml;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance new FILE</c>: a commented scenario to start from.</summary>
internal static class NewCommand
{
    public static Command Create()
    {
        var file = new Argument<string>("FILE") { Description = "The file to write, such as mine.yaml.", CustomParser = FileWords.One };
        var force = new Option<bool>("--force") { Description = "Replace the file if it exists." };
        var command = new Command("new", "Writes a commented starter scenario that runs.") { file, force };
        command.Answers((parse, output, _, _) =>
        {
            var path = parse.GetRequiredValue(file);
            SingleFile.Write(path, StarterScenario.Text, parse.GetValue(force));
            output.WriteLine($"wrote {path}");
            output.WriteLine($"next: endurance run {path}");
            return ExitCode.Met;
        });
        return command;
    }
}
