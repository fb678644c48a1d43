using System.CommandLine;
using Endurance.Cli.Output;
using Endurance.Yaml;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance new FILE</c>: a commented scenario to start from.</summary>
internal static class NewCommand
{
    public static Command Create()
    {
        var file = new Argument<string>("FILE") { Description = "The file to write, such as mine.yaml." };
        var force = new Option<bool>("--force") { Description = "Replace the file if it exists." };
        var command = new Command("new", "Writes a commented starter scenario that runs.") { file, force };
        command.SetAction((parse, _) =>
        {
            var path = parse.GetRequiredValue(file);
            var writers = parse.InvocationConfiguration;
            return Task.FromResult(Execute(path, parse.GetValue(force), writers.Output, writers.Error));
        });
        return command;
    }

    private static int Execute(string path, bool force, TextWriter output, TextWriter error)
    {
        try
        {
            SingleFile.Write(path, StarterScenario.Text, force);
        }
        catch (OutputException exception)
        {
            error.WriteLine($"endurance: {exception.Message}");
            return ExitCode.Usage;
        }

        output.WriteLine($"wrote {path}");
        output.WriteLine($"next: endurance run {path}");
        return ExitCode.Met;
    }
}
