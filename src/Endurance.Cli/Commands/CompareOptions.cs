using System.CommandLine;
using Endurance.Cli.Arguments;

namespace Endurance.Cli.Commands;

/// <summary>The words of <c>endurance compare</c> on the command line.</summary>
internal sealed class CompareOptions
{
    private readonly Argument<string[]> _files = new("FILE")
    {
        Description = "One scenario or more, YAML files; each is compared as drawn and in every layout of its own.",
        Arity = ArgumentArity.OneOrMore,
        CustomParser = FileWords.Several,
    };

    private readonly Option<string?> _case = new("--case")
    {
        Description = "The failure case of the picture. Default: the first.",
        HelpName = "NAME",
        CustomParser = Word.For("--case"),
    };

    private readonly Option<string[]> _overlays = ScenarioFile.Overlays();

    private readonly Option<string> _format = ResultFormat.Option();

    private readonly Option<string?> _out = SharedOptions.Folder("compare.json and the picture (PNG, SVG)");

    private readonly Option<bool> _quiet = SharedOptions.Quiet();

    private readonly Option<bool> _noProgress = SharedOptions.NoProgress();

    private readonly Option<bool> _force = SharedOptions.Force();

    public void AddTo(Command command)
    {
        command.Add(_files);
        Option[] options = [_case, _overlays, _format, _out, _quiet, _noProgress, _force];
        foreach (var option in options)
            command.Add(option);
    }

    public CompareRequest Read(ParseResult parse) => new()
    {
        Files = parse.GetRequiredValue(_files),
        Overlays = parse.GetValue(_overlays) ?? [],
        Case = parse.GetValue(_case),
        Format = parse.GetValue(_format) ?? ResultFormat.Table,
        OutputFolder = parse.GetValue(_out),
        IsQuiet = parse.GetValue(_quiet),
        ShowsProgress = !parse.GetValue(_quiet) && !parse.GetValue(_noProgress),
        IsForced = parse.GetValue(_force),
    };
}
