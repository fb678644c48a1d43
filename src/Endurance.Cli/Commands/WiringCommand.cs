using System.CommandLine;
using Endurance.Reports;
using Endurance.Scenarios;
using Endurance.Studies.Wiring;
using Endurance.Yaml;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance wiring FILE</c>: every wire of known gauge and length, judged by the tables.</summary>
internal static class WiringCommand
{
    public static Command Create(Screen screen)
    {
        var file = ScenarioFile.Argument();
        var overlays = ScenarioFile.Overlays();
        var format = ResultFormat.Option();
        var options = new WiringCommandOptions();
        var command = new Command("wiring", "Judges wires, breakers, fuses and switches by the tables of AC 43.13-1B.") { file, overlays };
        options.AddTo(command);
        command.Add(format);
        command.Answers((parse, output, error, cancellation) => ScenarioFile.Answer(
            ScenarioReader.ReadFile(parse.GetRequiredValue(file), overlays: parse.GetValue(overlays)), isQuiet: false, error, scenario => options.Refusal(parse, scenario), scenario =>
            {
                var result = WiringStudy.Run(scenario, options.Read(parse), cancellation);
                Write(parse.GetValue(format) ?? ResultFormat.Table, scenario, result, screen, output);
                return ScenarioFile.ExitOf(result.Rows.Any(row => row.Verdict == WiringVerdict.Fail) ? ExitCode.NotMet : ExitCode.Met, result.LeftOut, error);
            }));
        return command;
    }

    private static void Write(string format, Scenario scenario, WiringResult result, Screen screen, TextWriter output) => ResultFormat.Write(
        format, () => WiringJson.Write(result), () => WiringCsv.Write(result), () => WiringReport.Describe(scenario, result), screen, output);
}
