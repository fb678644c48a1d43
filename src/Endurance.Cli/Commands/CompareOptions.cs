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
    };

    private readonly Option<string?> _case = new("--case")
    {
        Description = "The failure case of the picture. Default: the first.",
        HelpName = "NAME",
        CustomParser = Word.For("--case"),
    };

    private readonly Option<string[]> _overlays = ScenarioFile.Overlays();

    private readonly Option<string> _format = ResultFormat.Option();

    private readonly Option<string?> _out = new("--out")
    {
        Description = "Write compare.json and the picture (PNG, SVG) into this folder. Without it nothing is written.",
        HelpName = "FOLDER",
        CustomParser = Word.For("--out"),
    };

    private readonly Option<bool> _force = new("--force") { Description = "Replace files in the folder that this program did not write." };

    public void AddTo(Command command)
    {
        command.Add(_files);
        Option[] options = [_case, _overlays, _format, _out, _force];
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
        IsForced = parse.GetValue(_force),
    };
}
