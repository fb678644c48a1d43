using System.CommandLine;
using Endurance.Cli.Arguments;

namespace Endurance.Cli.Commands;

/// <summary>The words that all studies share on the command line.</summary>
internal sealed class StudyOptions
{
    private readonly Argument<string> _file = ScenarioFile.Argument();

    private readonly Option<string> _format = new("--format")
    {
        Description = $"How the result is written: {string.Join(", ", ResultFormat.All)}. Default: {ResultFormat.Table}.",
        HelpName = "FORMAT",
        CustomParser = Choice.Of("--format", ResultFormat.All),
    };

    private readonly Option<string?> _out = new("--out")
    {
        Description = "Write the plots (PNG, SVG) and result.json into this folder. Without it nothing is written.",
        HelpName = "FOLDER",
        CustomParser = Word.For("--out"),
    };

    private readonly Option<bool> _quiet = new("--quiet") { Description = "The first table alone, no warnings and no progress." };

    private readonly Option<bool> _force = new("--force") { Description = "Replace files in the folder that this program did not write." };

    /// <param name="command">Gets its own options first, then the shared ones.</param>
    /// <param name="own">What this study alone takes.</param>
    public void AddTo(Command command, params ReadOnlySpan<Option> own)
    {
        command.Add(_file);
        foreach (var option in own)
            command.Add(option);
        Option[] shared = [_format, _out, _quiet, _force];
        foreach (var option in shared)
            command.Add(option);
    }

    public StudyRequest Read(ParseResult parse) => new()
    {
        File = parse.GetRequiredValue(_file),
        Format = parse.GetValue(_format) ?? ResultFormat.Table,
        OutputFolder = parse.GetValue(_out),
        IsQuiet = parse.GetValue(_quiet),
        IsForced = parse.GetValue(_force),
    };
}
