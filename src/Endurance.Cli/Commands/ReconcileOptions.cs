using System.CommandLine;
using Endurance.Cli.Arguments;

namespace Endurance.Cli.Commands;

/// <summary>The words of <c>endurance reconcile</c> on the command line.</summary>
internal sealed class ReconcileOptions
{
    private readonly Argument<string> _file = ScenarioFile.Argument();

    private readonly Argument<string> _card = new("MEASURED") { Description = "The filled card: testcard.csv as the testcard command wrote it for this scenario, with numbers under measured.", CustomParser = FileWords.One };

    private readonly Option<string[]> _overlays = ScenarioFile.Overlays();

    private readonly Option<DateOnly?> _date = new("--date")
    {
        Description = "The day of the measurements, for rows without a date of their own; needed with --out.",
        HelpName = "YYYY-MM-DD",
        CustomParser = Day.Of("--date"),
    };

    private readonly Option<string> _format = ResultFormat.Option();

    private readonly Option<string?> _out = SharedOptions.Folder("measured.yaml (an overlay), reconcile.json and reconcile.md");

    private readonly Option<bool> _force = SharedOptions.Force();

    public void AddTo(Command command)
    {
        command.Add(_file);
        command.Add(_card);
        Option[] options = [_overlays, _date, _format, _out, _force];
        foreach (var option in options)
            command.Add(option);
    }

    public ReconcileRequest Read(ParseResult parse) => new()
    {
        File = parse.GetRequiredValue(_file),
        Card = parse.GetRequiredValue(_card),
        Overlays = parse.GetValue(_overlays) ?? [],
        Date = parse.GetValue(_date),
        Format = parse.GetValue(_format) ?? ResultFormat.Table,
        OutputFolder = parse.GetValue(_out),
        IsForced = parse.GetValue(_force),
    };
}
