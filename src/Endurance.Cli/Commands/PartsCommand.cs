using System.CommandLine;
using Endurance.Cli.Arguments;
using Endurance.Reports;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance parts</c>: the built-in reference data with its sources.</summary>
internal static class PartsCommand
{
    private static readonly string[] Formats = [ResultFormat.Table, ResultFormat.Markdown, ResultFormat.Json];

    public static Command Create(Screen screen)
    {
        var format = Choice.Option("--format", "FORMAT", $"How the list is written: {string.Join(", ", Formats)}. Default: {ResultFormat.Table}.", Formats);
        var command = new Command("parts", "Lists the built-in reference data, each value with its source.") { format };
        command.Answers((parse, output, _, _) =>
        {
            var chosen = parse.GetValue(format) ?? ResultFormat.Table;
            if (chosen == ResultFormat.Json)
                output.Write(PartsJson.Write());
            else
                ResultFormat.Write(chosen, PartsReport.Describe(), screen, output);
            return ExitCode.Met;
        });
        return command;
    }
}
