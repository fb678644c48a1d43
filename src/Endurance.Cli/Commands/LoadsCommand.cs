using System.CommandLine;
using Endurance.Reports;
using Endurance.Scenarios;
using Endurance.Studies.LoadAnalysis;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance loads FILE</c>: the load analysis that a reviewer expects.</summary>
internal static class LoadsCommand
{
    public static Command Create(Screen screen)
    {
        var file = ScenarioFile.Argument();
        var overlays = ScenarioFile.Overlays();
        var format = ResultFormat.Option();
        var command = new Command("loads", "Adds loads up by bus and phase, against the alternator and the amp-minute form.") { file, overlays, format };
        command.Answers((parse, output, error, cancellation) => ScenarioFile.Answer(parse.GetRequiredValue(file), parse.GetValue(overlays), error, scenario =>
        {
            var result = LoadAnalysisStudy.Run(scenario, cancellation);
            Write(parse.GetValue(format) ?? ResultFormat.Table, scenario, result, screen, output);
            return ScenarioFile.ExitOf(result.Shares.All(share => share.IsWithin) ? ExitCode.Met : ExitCode.NotMet, result.LeftOut, error);
        }));
        return command;
    }

    private static void Write(string format, Scenario scenario, LoadAnalysisResult result, Screen screen, TextWriter output) => ResultFormat.Write(
        format, () => LoadAnalysisJson.Write(scenario, result), () => LoadAnalysisCsv.Write(result), () => LoadAnalysisReport.Describe(scenario, result), screen, output);
}
