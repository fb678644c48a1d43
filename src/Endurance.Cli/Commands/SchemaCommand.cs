using System.CommandLine;
using Endurance.Reports;
using Endurance.Yaml;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance schema</c>: the scenario file described for editors.</summary>
internal static class SchemaCommand
{
    private const string KeyKind = "scenario key";

    public static Command Create()
    {
        var command = new Command("schema", "Prints a JSON Schema of the scenario file, by which editors complete and check it.");
        command.Answers((_, output, _, _) =>
        {
            output.Write(ScenarioSchema.Write(key => Glossary.Find(key).FirstOrDefault(entry => entry.Kind is KeyKind)?.Text));
            return ExitCode.Met;
        });
        return command;
    }
}
