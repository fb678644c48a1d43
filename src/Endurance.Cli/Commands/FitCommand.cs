using System.CommandLine;
using Endurance.Cli.Logs;
using Endurance.Cli.Output;
using Endurance.Reports;
using Endurance.Studies.BatteryFit;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance fit LOG</c>: a battery out of the log of its discharges.</summary>
internal static class FitCommand
{
    public static Command Create(Screen screen)
    {
        var options = new FitOptions();
        var command = new Command("fit", "Fits a battery to a log of its discharges and judges a capacity test.");
        options.AddTo(command);
        command.Answers((parse, output, error, cancellation) =>
            Execute(options.Read(parse), output, error, screen, cancellation));
        return command;
    }

    private static int Execute(FitRequest request, TextWriter output, TextWriter error, Screen screen, CancellationToken cancellation)
    {
        var log = LogReader.Read(request.File);
        ScenarioFile.WriteDiagnostics(log.Diagnostics, error);
        if (log.Samples.IsEmpty)
            return ExitCode.Usage;

        var outcome = BatteryFitStudy.Run(log.Samples, request.Options, cancellation);
        if (outcome.Result is not { } fit)
        {
            error.WriteLine($"endurance: {request.File}: {outcome.Refusal}");
            return ExitCode.Usage;
        }

        var result = fit with { Findings = [.. fit.Findings, .. log.Notes] };
        var name = Path.GetFileName(request.File);
        RequestedFolder.Write(request.OutputFolder, () => FitFiles.Of(name, result), request.IsForced, error, cancellation);
        if (string.Equals(request.Format, ResultFormat.Json, StringComparison.Ordinal))
            output.Write(BatteryFitJson.Write(name, result));
        else
            ResultFormat.Write(request.Format, BatteryFitReport.Describe(name, result, request.Options.PassFraction), screen, output);
        return result.IsPassed ? ExitCode.Met : ExitCode.NotMet;
    }
}
