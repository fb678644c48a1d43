using System.CommandLine;
using Endurance.Cli.Arguments;
using Endurance.Reports;
using Endurance.Reports.Plots;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.Adjustment;
using Endurance.Studies.Sweeps;
using Endurance.Yaml.Units;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance sweep FILE</c>: minutes over one quantity.</summary>
internal sealed class SweepCommand
{
    private const int DefaultSteps = 9;
    private const int MostSteps = 10_000;

    private readonly StudyOptions _shared = new();

    private readonly Option<string> _vary = new("--vary")
    {
        Description = "What is varied: part and quantity, such as main_battery.health.",
        HelpName = "PART.QUANTITY",
        Required = true,
        CustomParser = result => Word.For("--vary")(result)!,
    };

    private readonly Option<string> _from = new("--from") { Description = "First value, with its unit, as in \"100 %\".", HelpName = "VALUE", Required = true };

    private readonly Option<string> _to = new("--to") { Description = "Last value, with its unit; may be below the first.", HelpName = "VALUE", Required = true };

    private readonly Option<int> _steps = new("--steps")
    {
        Description = "Number of values, both ends included, 2 to 10000. Default: 9.",
        HelpName = "NUMBER",
        CustomParser = WholeNumber.Between("--steps", 2, MostSteps),
    };

    public static Command Create(Screen screen) => new SweepCommand().Build(screen);

    private Command Build(Screen screen)
    {
        var command = new Command("sweep", "Runs every failure case over a range of one quantity.");
        _shared.AddTo(command, _vary, _from, _to, _steps);
        StudyExecution.Set(command, screen, _shared.Read, Refusal, Run);
        return command;
    }

    private string? Refusal(ParseResult parse, Scenario scenario)
    {
        var path = parse.GetRequiredValue(_vary);
        if (AdjustableQuantities.Find(scenario, path) is not { } quantity)
            return Unknown(path, [.. AdjustableQuantities.Of(scenario).Select(known => known.Path)]);
        var range = AdjustableRange.Of(quantity);
        return Fault("--from", parse.GetRequiredValue(_from), range) ?? Fault("--to", parse.GetRequiredValue(_to), range)
            ?? (Si(parse, _from, range) == Si(parse, _to, range) ? "--from and --to are the same value; a sweep needs two." : null);
    }

    /// <summary>Lists the quantities of the part that was meant, or every part when none was.</summary>
    private static string Unknown(string path, string[] known)
    {
        var part = path.Split('.')[0] + ".";
        var ofPart = known.Where(one => one.StartsWith(part, StringComparison.Ordinal)).ToArray();
        var listed = ofPart.Length > 0
            ? $"Of {part[..^1]} there are: {string.Join(", ", ofPart)}."
            : $"The parts with quantities are: {string.Join(", ", known.Select(one => one.Split('.')[0]).Distinct(StringComparer.Ordinal))}.";
        return $"--vary: there is no quantity '{path}'.{NearestWord.Hint(path, known)} {listed}";
    }

    private static string? Fault(string option, string text, QuantityRange range) =>
        QuantityReader.Read(text, range).Fault is { } fault ? $"{option}: {fault.Sentence}" : null;

    private static double Si(ParseResult parse, Option<string> option, QuantityRange range) => QuantityReader.Read(parse.GetRequiredValue(option), range).Value ?? 0;

    private StudyOutput Run(ParseResult parse, Scenario scenario, StudyProgress progress, CancellationToken cancellation)
    {
        var quantity = AdjustableQuantities.Find(scenario, parse.GetRequiredValue(_vary))!;
        var range = AdjustableRange.Of(quantity);
        var steps = parse.GetResult(_steps) is null ? DefaultSteps : parse.GetValue(_steps);
        var points = SweepStudy.Run(scenario, quantity, Si(parse, _from, range), Si(parse, _to, range), steps, new SimulationOptions(), progress.Report, cancellation);
        var result = new SweepResult(scenario, quantity, points);
        return new StudyOutput
        {
            Json = () => SweepJson.Write(result),
            Csv = () => SweepCsv.Write(result),
            Document = () => SweepReport.Describe(result),
            Plots = () => [($"sweep-{FileStem.Of(quantity.Path)}", SweepPlot.Describe(result))],
            IsMet = result.IsMetByAll,
        };
    }
}
