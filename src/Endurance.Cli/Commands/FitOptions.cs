using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Endurance.Cli.Arguments;
using Endurance.Quantities;
using Endurance.Studies.BatteryFit;
using Endurance.Yaml.Keys;
using Endurance.Yaml.Units;

namespace Endurance.Cli.Commands;

/// <summary>The words of <c>endurance fit</c> on the command line.</summary>
internal sealed class FitOptions
{
    private const double MostExponent = 3;

    private static readonly QuantityRange Capacity = QuantityRange.Above(Dimension.Charge, "Ah", 0, 10_000, "17 Ah");
    private static readonly BatteryFitOptions Defaults = new();

    private readonly Argument<string> _file = new("LOG") { Description = "The log, a file with comma-separated values.", CustomParser = FileWords.One };

    private readonly Option<RatedCapacity?> _rated = new("--rated")
    {
        Description = "Capacity of the label with its hour rate, as in \"17 Ah at 20 h\": tells health and judges a capacity test.",
        HelpName = "CAPACITY",
        CustomParser = Rated,
    };

    private readonly Option<double[]> _to = new("--to")
    {
        Description = "Terminal voltage to count minutes to; may be given several times, and the lowest ends the discharge. Default: the last voltage that every run reached.",
        HelpName = "VOLTS",
        CustomParser = TypedQuantity.Several("--to", Limits.Volts("10.5 V")),
    };

    private readonly Option<int[]> _runs = new("--run")
    {
        Description = "Fit on this run alone and predict the others; may be given several times.",
        HelpName = "NUMBER",
        CustomParser = Runs,
    };

    private readonly Option<double?> _skip = new("--skip")
    {
        Description = "Left out of the voltage fit at the start of each run, for surface charge. Default: \"5 min\".",
        HelpName = "TIME",
        CustomParser = TypedQuantity.Of("--skip", Limits.Time("5 min")),
    };

    private readonly Option<double?> _pass = new("--pass")
    {
        Description = "Part of the rating that passes a capacity test. Default: \"80 %\" (common practice, no source).",
        HelpName = "PERCENT",
        CustomParser = TypedQuantity.Of("--pass", Limits.PercentAboveZero(150, "80 %")),
    };

    private readonly Option<double?> _resistance = new("--resistance")
    {
        Description = "Resistance known from elsewhere. Default: from the current steps of the log.",
        HelpName = "OHMS",
        CustomParser = TypedQuantity.Of("--resistance", Limits.Ohms("9 mohm")),
    };

    private readonly Option<double?> _exponent = new("--peukert")
    {
        Description = "Exponent known from elsewhere. Default: from the several rates of the log.",
        HelpName = "NUMBER",
        CustomParser = TypedQuantity.Of("--peukert", Limits.Number(1, MostExponent, "1.15")),
    };

    private readonly Option<string> _format = SharedOptions.Format(Formats);

    private readonly Option<string?> _out = SharedOptions.Folder("battery.yaml, fit.json and a plot (PNG, SVG)");

    private readonly Option<bool> _force = SharedOptions.Force();

    public static string[] Formats => [ResultFormat.Table, ResultFormat.Json, ResultFormat.Markdown];

    public void AddTo(Command command)
    {
        command.Add(_file);
        Option[] options = [_rated, _to, _runs, _skip, _pass, _resistance, _exponent, _format, _out, _force];
        foreach (var option in options)
            command.Add(option);
    }

    public FitRequest Read(ParseResult parse) => new()
    {
        File = parse.GetRequiredValue(_file),
        Options = new BatteryFitOptions
        {
            Rated = parse.GetValue(_rated),
            EndVoltages = [.. (parse.GetValue(_to) ?? []).Select(Voltage.FromVolts)],
            Runs = [.. (parse.GetValue(_runs) ?? []).Distinct()],
            Skip = parse.GetValue(_skip) is { } seconds ? Duration.FromSeconds(seconds) : Defaults.Skip,
            PassFraction = parse.GetValue(_pass) ?? Defaults.PassFraction,
            Resistance = parse.GetValue(_resistance) is { } ohms ? Resistance.FromOhms(ohms) : null,
            PeukertExponent = parse.GetValue(_exponent),
        },
        Format = parse.GetValue(_format) ?? ResultFormat.Table,
        OutputFolder = parse.GetValue(_out),
        IsForced = parse.GetValue(_force),
    };

    private static RatedCapacity? Rated(ArgumentResult result)
    {
        var text = result.Tokens[0].Value;
        if (text.Split(" at ", StringSplitOptions.TrimEntries) is not [var capacity, var rate])
        {
            result.AddError($"--rated: '{text}' is not a capacity at an hour rate; expected one such as \"17 Ah at 20 h\".");
            return null;
        }

        var coulombs = TypedQuantity.Read(result, "--rated", capacity, Capacity);
        var seconds = TypedQuantity.Read(result, "--rated", rate, Limits.TimeAboveZero("20 h"));
        return coulombs is { } charge && seconds is { } time ? new RatedCapacity(Charge.FromCoulombs(charge), Duration.FromSeconds(time)) : null;
    }

    private static int[] Runs(ArgumentResult result)
    {
        var numbers = new List<int>();
        foreach (var text in result.Tokens.Select(token => token.Value))
        {
            if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0)
                numbers.Add(number);
            else
                result.AddError($"--run: '{text}' is not the number of a run; expected 1, 2, ...");
        }

        return [.. numbers];
    }
}
