using System.CommandLine;

namespace Endurance.Cli.Commands;

/// <summary>The words that all studies share on the command line.</summary>
internal sealed class StudyOptions
{
    private readonly Argument<string> _file = ScenarioFile.Argument();

    private readonly Option<string[]> _overlays = ScenarioFile.Overlays();

    private readonly Option<string> _format = ResultFormat.Option();

    private readonly Option<string?> _out = SharedOptions.Folder("the plots (PNG, SVG) and result.json");

    private readonly Option<bool> _quiet = SharedOptions.Quiet();

    private readonly Option<bool> _noProgress = SharedOptions.NoProgress();

    private readonly Option<bool> _force = SharedOptions.Force();

    /// <param name="command">Gets its own options first, then the shared ones.</param>
    /// <param name="own">What this study alone takes.</param>
    public void AddTo(Command command, params ReadOnlySpan<Option> own)
    {
        command.Add(_file);
        foreach (var option in own)
            command.Add(option);
        Option[] shared = [_overlays, _format, _out, _quiet, _noProgress, _force];
        foreach (var option in shared)
            command.Add(option);
    }

    public StudyRequest Read(ParseResult parse) => new()
    {
        File = parse.GetRequiredValue(_file),
        Overlays = parse.GetValue(_overlays) ?? [],
        Format = parse.GetValue(_format) ?? ResultFormat.Table,
        OutputFolder = parse.GetValue(_out),
        IsQuiet = parse.GetValue(_quiet),
        ShowsProgress = !parse.GetValue(_quiet) && !parse.GetValue(_noProgress),
        IsForced = parse.GetValue(_force),
    };
}
