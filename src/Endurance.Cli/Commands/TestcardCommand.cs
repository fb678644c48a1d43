using System.Collections.Immutable;
using System.CommandLine;
using Endurance.Cli.Arguments;
using Endurance.Cli.Output;
using Endurance.Reports;
using Endurance.Reports.Html;
using Endurance.Studies.GroundTest;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance testcard FILE</c>: a ground test with numbered points and predictions.</summary>
internal static class TestcardCommand
{
    private const string Html = "html";
    private const string Table = "testcard.csv";

    public static Command Create()
    {
        var file = ScenarioFile.Argument();
        var overlays = ScenarioFile.Overlays();
        var format = Choice.Option(
            "--format", "FORMAT",
            $"How the card is written: {ResultFormat.Markdown}, {Html} or {ResultFormat.Csv}. Default: {ResultFormat.Markdown}; with --out all three, unless one is named.",
            ResultFormat.Markdown, Html, ResultFormat.Csv);
        var folder = new Option<string?>("--out") { Description = "Write the card into this folder: testcard.md, testcard.html and testcard.csv.", HelpName = "FOLDER", CustomParser = Word.For("--out") };
        var force = SharedOptions.Force();
        var command = new Command("testcard", "Writes a ground test: numbered points, each with what to set, what to read, and when to stop.") { file, overlays, format, folder, force };
        command.Answers((parse, output, error, cancellation) => ScenarioFile.Answer(parse.GetRequiredValue(file), parse.GetValue(overlays), error, scenario =>
        {
            var plan = GroundTestStudy.Plan(scenario, cancellation);
            if (parse.GetValue(folder) is { } into)
                WriteFolder(into, Files(plan, parse.GetValue(format)), parse.GetValue(force), error, cancellation);
            else
                output.Write(Text(plan, parse.GetValue(format) ?? ResultFormat.Markdown));
            return ScenarioFile.ExitOf(ExitCode.Met, plan.LeftOut, error);
        }));
        return command;
    }

    private static string Text(GroundTestPlan plan, string format) => format switch
    {
        Html => HtmlPage.Write(TestCardReport.Describe(plan)),
        ResultFormat.Csv => TestCardCsv.Write(plan),
        _ => MarkdownReport.Write(TestCardReport.Describe(plan)),
    };

    private static ImmutableArray<OutputFile> Files(GroundTestPlan plan, string? format)
    {
        ImmutableArray<(string Name, string Format)> forms = [("testcard.md", ResultFormat.Markdown), ("testcard.html", Html), (Table, ResultFormat.Csv)];
        return
        [
            .. forms.Where(form => format is null || string.Equals(form.Format, format, StringComparison.Ordinal))
                .Select(form => OutputFile.OfText(form.Name, () => Text(plan, form.Format))),
        ];
    }

    private static void WriteFolder(string folder, ImmutableArray<OutputFile> files, bool force, TextWriter error, CancellationToken cancellation)
    {
        if (!force && files.Any(file => IsFilledIn(Path.Combine(folder, file.Name))))
            throw new OutputException($"{Path.Combine(folder, Table)} has been filled in; choose another folder, or replace it with --force");
        RequestedFolder.Write(folder, () => files, force, error, cancellation);
    }

    /// <summary>Some row does not end with the two empty cells it was written with: measurements that nobody wants to take again.</summary>
    private static bool IsFilledIn(string path)
    {
        if (!string.Equals(Path.GetFileName(path), Table, StringComparison.Ordinal) || !File.Exists(path))
            return false;
        try
        {
            return File.ReadLines(path).Skip(1).Any(line => line.Length > 0 && !line.EndsWith(",,", StringComparison.Ordinal) && !line.EndsWith(";;", StringComparison.Ordinal));
        }
        catch (Exception exception) when (OutputException.IsDisk(exception))
        {
            throw new OutputException($"cannot read {path}: {exception.Message.ReplaceLineEndings(" ")}");
        }
    }
}
