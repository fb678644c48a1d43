using System.Collections.Immutable;
using System.CommandLine;
using Endurance.Cli.Logs;
using Endurance.Cli.Output;
using Endurance.Reports;
using Endurance.Scenarios;
using Endurance.Studies;
using Endurance.Studies.GroundTest;
using Endurance.Studies.Reconciliation;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance reconcile FILE MEASURED</c>: a filled card beside its predictions, and the minutes with what was measured.</summary>
internal static class ReconcileCommand
{
    public static Command Create(Screen screen)
    {
        var options = new ReconcileOptions();
        var command = new Command("reconcile", "Sets a filled test card beside its predictions and runs the cases again with the measured loads.");
        options.AddTo(command);
        command.Answers((parse, output, error, cancellation) =>
        {
            var request = options.Read(parse);
            return ScenarioFile.Answer(request.File, request.Overlays, error, scenario => Execute(request, scenario, output, error, screen, cancellation));
        });
        return command;
    }

    private static int Execute(ReconcileRequest request, Scenario scenario, TextWriter output, TextWriter error, Screen screen, CancellationToken cancellation)
    {
        if (ScenarioFile.NothingToRun(request.File, scenario) is { } nothing)
            return Refused(nothing, error);
        var plan = GroundTestStudy.Plan(scenario, cancellation);
        var (measured, diagnostics) = CardReader.Read(request.Card, plan);
        ScenarioFile.WriteDiagnostics(diagnostics, error);
        if (measured.IsEmpty)
            return ExitCode.Usage;
        var result = ReconciliationStudy.Run(scenario, plan, [.. measured.Select(reading => reading with { Date = reading.Date ?? request.Date })], cancellation);
        if (Refusal(request, result) is { } refusal)
            return Refused(refusal, error);
        RequestedFolder.Write(request.OutputFolder, () => Files(request, result), request.IsForced, error, cancellation);
        ResultFormat.Write(
            request.Format,
            () => ReconciliationJson.Write(result),
            () => ReconciliationCsv.Write(result),
            () => request.Format == ResultFormat.Markdown ? ReconciliationReport.Describe(result) : ReconciliationReport.DescribeForScreen(result),
            screen,
            output);
        return ScenarioFile.ExitOf(result.IsMet ? ExitCode.Met : ExitCode.NotMet, [.. plan.LeftOut, .. LeftOut.Of(result.After)], error);
    }

    private static int Refused(string reason, TextWriter error)
    {
        error.WriteLine($"endurance: {reason}");
        return ExitCode.Usage;
    }

    /// <summary>Why these files cannot be written; <see langword="null"/> when they can, or none is asked for.</summary>
    private static string? Refusal(ReconcileRequest request, ReconciliationResult result)
    {
        if (request.OutputFolder is not { } folder)
            return null;
        if (result.Loads.FirstOrDefault(load => load.Measured.MeasuredOn is null) is { } undated)
            return $"--date: the card does not say when {undated.Drawn.Name} was measured; give the day, such as --date 2026-05-02.";

        // What an earlier command wrote into the folder is deleted by the next one, and that may be the card itself.
        var inside = request.Overlays.Prepend(request.Card).Prepend(request.File).FirstOrDefault(read => IsIn(folder, read));
        return inside is null ? null : $"--out: {folder} holds {Path.GetFileName(inside)}, which is read here; choose another folder.";
    }

    private static bool IsIn(string folder, string file) =>
        string.Equals(Path.GetDirectoryName(Path.GetFullPath(file)), Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)), StringComparison.Ordinal);

    private static ImmutableArray<OutputFile> Files(ReconcileRequest request, ReconciliationResult result) =>
    [
        OutputFile.OfText("measured.yaml", () => MeasuredOverlay.Write(Path.GetFileName(request.File), Path.GetFileName(request.Card), result)),
        OutputFile.OfText("reconcile.json", () => ReconciliationJson.Write(result)),
        OutputFile.OfText("reconcile.md", () => MarkdownReport.Write(ReconciliationReport.Describe(result))),
    ];
}
