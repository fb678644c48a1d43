using System.CommandLine;
using Endurance.Cli.Arguments;
using Endurance.Reports;
using Endurance.Reports.Plots;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using Endurance.Studies.Spread;
using Endurance.Studies.Sweeps;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance spread FILE</c>: how sure the minutes are.</summary>
internal sealed class SpreadCommand
{
    private const int FewestSamples = 2;
    private const int MostSamples = 1_000_000;
    private const int MostSeed = 1_000_000_000;

    private readonly StudyOptions _shared = new();

    private readonly Option<int> _samples = new("--samples")
    {
        Description = "Number of scenarios drawn within the tolerances, 2 to 1000000. Default: 1000.",
        HelpName = "NUMBER",
        CustomParser = WholeNumber.Between("--samples", FewestSamples, MostSamples),
    };

    private readonly Option<int> _seed = new("--seed")
    {
        Description = "The same seed gives the same numbers. Default: 1.",
        HelpName = "NUMBER",
        CustomParser = WholeNumber.Between("--seed", 0, MostSeed),
    };

    private readonly Option<bool> _sensitivity = new("--sensitivity") { Description = "Also what each tolerance alone does, low and high, largest first." };

    public static Command Create(Screen screen) => new SpreadCommand().Build(screen);

    private Command Build(Screen screen)
    {
        var command = new Command("spread", "Tells how the minutes are spread within the tolerances, and how likely each requirement is met.");
        _shared.AddTo(command, _samples, _seed, _sensitivity);
        StudyExecution.Set(command, screen, _shared.Read, Refusal, Run);
        return command;
    }

    private static string? Refusal(ParseResult parse, Scenario scenario) => scenario.Tolerances.IsEmpty
        ? $"{parse.GetValue<string>("FILE")} has no tolerances, so nothing is spread. Write how far each quantity may be off, as in\n{Example(scenario)}"
        : null;

    /// <summary>With this scenario's own names, to be pasted in.</summary>
    private static string Example(Scenario scenario) => "tolerances:\n"
        + string.Concat(scenario.Batteries.Take(1).Select(battery => $"  {battery.Name}.health: {{triangular: [70 %, 80 %, 90 %]}}   # least, likeliest, most\n"))
        + "  loads.draw: {normal: [1, 0.05]}   # all loads together: mean and standard deviation of a factor\n"
        + "  recognition.delay: {uniform: [0 min, 5 min]}   # least and most";

    private StudyOutput Run(ParseResult parse, Scenario scenario, StudyProgress progress, CancellationToken cancellation)
    {
        var options = new SpreadOptions { Progress = progress.Report };
        options = options with
        {
            Samples = parse.GetResult(_samples) is null ? options.Samples : parse.GetValue(_samples),
            Seed = parse.GetResult(_seed) is null ? options.Seed : parse.GetValue(_seed),
        };
        var result = new SpreadResult
        {
            Scenario = scenario,
            Options = options,
            Cases = SpreadStudy.Run(scenario, options, cancellation),
            AsWritten = FailureCaseStudy.Run(scenario, scenario.FailureCases, new SimulationOptions(), cancellation),
            Sensitivity = parse.GetValue(_sensitivity) ? SweepStudy.Sensitivity(scenario, new SimulationOptions(), cancellation) : [],
        };
        return new StudyOutput
        {
            Json = () => SpreadJson.Write(result),
            Csv = () => SpreadCsv.Write(result),
            Document = () => SpreadReport.Describe(result),
            Plots = () =>
            [
                .. result.Cases.Select(one => ($"spread-{FileStem.Of(one.Name)}", SpreadPlot.Describe(result, one))),
                .. result.Cases.Select((one, c) => ($"sensitivity-{FileStem.Of(one.Name)}", SensitivityPlot.Describe(result, c))),
            ],
            IsMet = result.IsMetByAll,
        };
    }
}
