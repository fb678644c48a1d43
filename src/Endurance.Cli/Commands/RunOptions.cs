using System.CommandLine;
using Endurance.Cli.Arguments;
using Endurance.Quantities;
using Endurance.Simulation;

namespace Endurance.Cli.Commands;

/// <summary>The words of <c>endurance run</c> on the command line.</summary>
internal sealed class RunOptions
{
    private const double FinestTolerance = 1e-12;
    private const double CoarsestTolerance = 1e-2;
    private static readonly Duration DefaultSampleInterval = Duration.FromSeconds(30);

    private readonly Argument<string> _file = ScenarioFile.Argument();

    private readonly Option<string[]> _cases = new("--case")
    {
        Description = "Run this failure case alone; may be given several times.",
        HelpName = "NAME",
        CustomParser = Word.Several("--case"),
    };

    private readonly Option<string?> _layout = new("--layout")
    {
        Description = "Lay this layout of the scenario over it; without it the scenario runs as drawn.",
        HelpName = "NAME",
        CustomParser = Word.For("--layout"),
    };

    private readonly Option<string[]> _overlays = ScenarioFile.Overlays();

    private readonly Option<string> _format = ResultFormat.Option();

    private readonly Option<string?> _out = SharedOptions.Folder("plots (PNG, SVG), traces (CSV) and results.json");

    private readonly Option<Duration> _sample = new("--sample")
    {
        Description = "Spacing of the traces, with its unit: s, min or h. Default: \"30 s\".",
        HelpName = "INTERVAL",
        CustomParser = Interval.AboveZero("--sample"),
    };

    private readonly Option<double> _tolerance = new("--tolerance")
    {
        Description = "Largest error of a state of charge in one step, 1e-12 to 1e-2. Default: 1e-8.",
        HelpName = "NUMBER",
        CustomParser = DecimalNumber.Between("--tolerance", FinestTolerance, CoarsestTolerance),
    };

    private readonly Option<bool> _quiet = new("--quiet") { Description = "The summary alone, and no warnings." };

    private readonly Option<bool> _noPlots = new("--no-plots") { Description = "Leave the plots out of the folder." };

    private readonly Option<bool> _force = SharedOptions.Force();

    public void AddTo(Command command)
    {
        command.Add(_file);
        Option[] options = [_cases, _layout, _overlays, _format, _out, _sample, _tolerance, _quiet, _noPlots, _force];
        foreach (var option in options)
            command.Add(option);
    }

    public RunRequest Read(ParseResult parse) => new()
    {
        File = parse.GetRequiredValue(_file),
        Layout = parse.GetValue(_layout),
        Overlays = parse.GetValue(_overlays) ?? [],
        Cases = parse.GetValue(_cases) ?? [],
        Format = parse.GetValue(_format) ?? ResultFormat.Table,
        OutputFolder = parse.GetValue(_out),
        SampleInterval = parse.GetResult(_sample) is null ? DefaultSampleInterval : parse.GetValue(_sample),
        Tolerance = parse.GetResult(_tolerance) is null ? new SimulationOptions().Tolerance : parse.GetValue(_tolerance),
        IsQuiet = parse.GetValue(_quiet),
        HasPlots = !parse.GetValue(_noPlots),
        IsForced = parse.GetValue(_force),
    };
}
