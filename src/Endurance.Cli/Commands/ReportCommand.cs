using System.CommandLine;
using Endurance.Cli.Arguments;
using Endurance.Cli.Output;
using Endurance.Reports.Html;
using Endurance.Studies;
using Endurance.Yaml;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance report FILE</c>: one page for a reviewer.</summary>
internal static class ReportCommand
{
    private const string PageName = "report.html";

    public static Command Create()
    {
        var file = ScenarioFile.Argument();
        var overlays = ScenarioFile.Overlays();
        var place = new Option<string>("--out") { Description = "The page to write, such as mine.html, or a folder for report.html.", Required = true, HelpName = "FILE.html|FOLDER", CustomParser = result => Word.For("--out")(result)! };
        var date = new Option<DateOnly?>("--date") { Description = "The day that the page carries, such as 2026-05-02; otherwise it says that none was given.", HelpName = "YYYY-MM-DD", CustomParser = Day.Of("--date") };
        var force = new Option<bool>("--force") { Description = "Replace what the program did not write there before." };
        var command = new Command("report", "Writes one self-contained HTML page for a reviewer.") { file, overlays, place, date, force };
        command.Answers((parse, _, error, cancellation) =>
        {
            var request = (Path: parse.GetRequiredValue(file), Overlays: parse.GetValue(overlays) ?? [], Place: parse.GetRequiredValue(place), Force: parse.GetValue(force));
            return Execute(request, parse.GetValue(date), error, cancellation);
        });
        return command;
    }

    private static int Execute((string Path, string[] Overlays, string Place, bool Force) request, DateOnly? day, TextWriter error, CancellationToken cancellation) =>
        ScenarioFile.Answer(request.Path, request.Overlays, error, _ =>
        {
            var source = ReportSource.Read(request.Path, Bytes(request.Path), [.. request.Overlays.Select(overlay => (overlay, Bytes(overlay)))]);
            ScenarioFile.WriteDiagnostics([.. source.Diagnostics.Where(told => told.Layout is not null)], error);
            if (source.Refusal is { } refusal)
                error.WriteLine($"endurance: {refusal}");
            if (source.Scenario is null)
                return ExitCode.Usage;
            var facts = ReportFacts.Of(source, day, cancellation);
            Write(request.Place, ReviewPage.Write(facts), request.Force, cancellation);
            error.WriteLine($"wrote {request.Place}");
            return ScenarioFile.ExitOf(
                ScenarioFile.Judged(facts.Cases),
                [.. LeftOut.Of(facts.Cases).Concat(facts.Wiring.LeftOut).DistinctBy(one => one.What)],
                error);
        });

    private static byte[] Bytes(string path)
    {
        try
        {
            return File.ReadAllBytes(path);
        }
        catch (Exception exception) when (OutputException.IsDisk(exception))
        {
            throw new OutputException($"cannot read {path}: {exception.Message.ReplaceLineEndings(" ")}");
        }
    }

    private static void Write(string place, string page, bool force, CancellationToken cancellation)
    {
        if (place.EndsWith(".html", StringComparison.OrdinalIgnoreCase) || place.EndsWith(".htm", StringComparison.OrdinalIgnoreCase))
            SingleFile.Write(place, page, force);
        else
            OutputFolder.Write(place, [OutputFile.OfText(PageName, () => page)], force, cancellation);
    }
}
