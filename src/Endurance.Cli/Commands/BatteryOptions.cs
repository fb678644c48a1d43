using System.CommandLine;
using Endurance.Cli.Arguments;
using Endurance.Quantities;
using Endurance.Studies.BatteryCurves;
using Endurance.Yaml.Keys;

namespace Endurance.Cli.Commands;

/// <summary>The words of <c>endurance battery</c> on the command line.</summary>
internal sealed class BatteryOptions
{
    private const double LeastAmperes = 0.001;
    private const double MostAmperes = 10_000;

    public static readonly string[] Formats = [ResultFormat.Table, ResultFormat.Markdown, ResultFormat.Json];

    private readonly Argument<string> _file = ScenarioFile.Argument();

    private readonly Option<string?> _battery = new("--battery")
    {
        Description = "This battery alone. Default: every battery of the scenario.",
        HelpName = "NAME",
        CustomParser = Word.For("--battery"),
    };

    private readonly Option<double[]> _amps = new("--amps")
    {
        Description = "A constant current in amperes; may be given several times. Default: round currents around the rating, and those stated.",
        HelpName = "NUMBER",
        CustomParser = TypedQuantity.Several("--amps", Limits.Number(LeastAmperes, MostAmperes, "5")),
    };

    private readonly Option<double?> _to = new("--to")
    {
        Description = "Terminal voltage at which the minutes end, as in \"10.5 V\". Default: exhaustion.",
        HelpName = "VOLTS",
        CustomParser = TypedQuantity.Of("--to", Limits.Volts("10.5 V")),
    };

    private readonly Option<string[]> _overlays = ScenarioFile.Overlays();

    private readonly Option<string> _format = SharedOptions.Format(Formats);

    private readonly Option<string?> _out = SharedOptions.Folder("a plot of each battery (PNG, SVG)");

    private readonly Option<bool> _force = SharedOptions.Force();

    public void AddTo(Command command)
    {
        command.Add(_file);
        Option[] options = [_battery, _amps, _to, _overlays, _format, _out, _force];
        foreach (var option in options)
            command.Add(option);
    }

    public BatteryRequest Read(ParseResult parse) => new()
    {
        File = parse.GetRequiredValue(_file),
        Overlays = parse.GetValue(_overlays) ?? [],
        Battery = parse.GetValue(_battery),
        Options = new BatteryCurveOptions
        {
            Currents = [.. (parse.GetValue(_amps) ?? []).Select(Current.FromAmperes)],
            EndVoltage = parse.GetValue(_to) is { } volts ? Voltage.FromVolts(volts) : null,
        },
        Format = parse.GetValue(_format) ?? ResultFormat.Table,
        OutputFolder = parse.GetValue(_out),
        IsForced = parse.GetValue(_force),
    };
}
