using System.CommandLine;
using Endurance.Cli.Arguments;
using Endurance.Reports;
using Endurance.Reports.Plots;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.Sizing;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance size FILE</c>: how large a battery must be, and how far other things may go.</summary>
internal sealed class SizeCommand
{
    private static readonly string[] Finds = ["capacity", "load", "delay", "shed_time", "health"];

    private readonly StudyOptions _shared = new();

    private readonly Option<string?> _battery = new("--battery")
    {
        Description = "The battery to size, or whose health is asked for. Not needed when there is only one.",
        HelpName = "NAME",
        CustomParser = Word.For("--battery"),
    };

    private readonly Option<string> _find = Choice.Option(
        "--find", string.Join('|', Finds),
        "What is looked for: the smallest capacity, the most extra load, the longest delay of everything the pilot does, the longest delay of shedding, the lowest health. Default: capacity.",
        Finds);

    private readonly Option<string?> _bus = new("--bus")
    {
        Description = "With --find load: the bus that the extra load sits on.",
        HelpName = "NAME",
        CustomParser = Word.For("--bus"),
    };

    private readonly Option<bool> _keepResistance = new("--keep-resistance") { Description = "Another capacity has the same resistance. Default: resistance falls as 1/capacity." };

    private readonly Option<bool> _offers = new("--offers") { Description = "Show every entry of batteries_on_offer in place of the battery, not only the smallest that passes." };

    public static Command Create(Screen screen) => new SizeCommand().Build(screen);

    private Command Build(Screen screen)
    {
        var command = new Command("size", "Finds the smallest battery, or the most of something else, that still meets every requirement.");
        _shared.AddTo(command, _battery, _find, _bus, _keepResistance, _offers);
        StudyExecution.Set(command, screen, _shared.Read, Refusal, Run);
        return command;
    }

    private SizingFind FindOf(ParseResult parse) => parse.GetValue(_find) switch
    {
        "load" => SizingFind.Load,
        "delay" => SizingFind.Delay,
        "shed_time" => SizingFind.ShedTime,
        "health" => SizingFind.Health,
        _ => SizingFind.Capacity,
    };

    private bool IsAboutABattery(ParseResult parse) => FindOf(parse) is SizingFind.Capacity or SizingFind.Health;

    private string? Refusal(ParseResult parse, Scenario scenario)
    {
        var batteries = scenario.Batteries.Select(battery => battery.Name).ToList();
        var buses = scenario.Buses.Select(bus => bus.Name).ToList();
        if (scenario.Requirements.IsEmpty)
            return $"{parse.GetValue<string>("FILE")} asks for nothing; write under requirements what must last how long, such as {{loads: essential, endure: 30 min}}.";
        if (parse.GetValue(_battery) is { } battery && PartName.Unknown("--battery", "battery", "batteries", battery, batteries) is { } unknown)
            return unknown;
        if (parse.GetValue(_bus) is { } bus && PartName.Unknown("--bus", "bus", "buses", bus, buses) is { } strange)
            return strange;
        if (IsAboutABattery(parse) && parse.GetValue(_battery) is null && batteries.Count != 1)
            return $"choose the battery with --battery. The batteries are: {string.Join(", ", batteries)}.";
        if (FindOf(parse) == SizingFind.Load && parse.GetValue(_bus) is null)
            return $"--find load needs --bus. The buses are: {string.Join(", ", buses)}.";
        if (FindOf(parse) is SizingFind.Delay or SizingFind.ShedTime && !SizingStudy.HasStepsToDelay(scenario, FindOf(parse) == SizingFind.ShedTime))
            return $"--find {parse.GetValue(_find)}: no failure case has a step after zero that {(FindOf(parse) == SizingFind.ShedTime ? "sheds" : "opens, closes, sheds, connects, starts, restores or selects")} anything.";
        if (FindOf(parse) != SizingFind.Load && parse.GetValue(_bus) is not null)
            return "--bus goes with --find load only.";
        if (FindOf(parse) != SizingFind.Capacity && (parse.GetValue(_offers) || parse.GetValue(_keepResistance)))
            return "--offers and --keep-resistance go with --find capacity only.";
        return parse.GetValue(_offers) && scenario.BatteriesOnOffer.IsEmpty
            ? "--offers: the scenario has no batteries_on_offer; write them as in\nbatteries_on_offer:\n  - {name: large, capacity: 24 Ah, rate: 20 h, mass: 7.5 kg}"
            : null;
    }

    private StudyOutput Run(ParseResult parse, Scenario scenario, StudyProgress progress, CancellationToken cancellation)
    {
        var find = FindOf(parse);
        var question = new SizingQuestion
        {
            Find = find,
            Subject = IsAboutABattery(parse) ? parse.GetValue(_battery) ?? scenario.Batteries[0].Name : find == SizingFind.Load ? parse.GetValue(_bus)! : "",
            KeepsResistance = parse.GetValue(_keepResistance),
        };
        var withOffers = parse.GetValue(_offers);
        var answer = SizingStudy.Answer(scenario, question, new SimulationOptions(), progress.Report, cancellation);
        return new StudyOutput
        {
            Json = () => SizingJson.Write(scenario, answer, withOffers),
            Csv = () => SizingCsv.Write(answer),
            Document = () => SizingReport.Describe(scenario, answer, withOffers),
            Plots = () => [($"size-{FileStem.Of($"{parse.GetValue(_find) ?? Finds[0]}-{question.Subject}")}", SizingPlot.Describe(scenario, answer))],
            IsMet = answer.Present.Passes && answer.Limit.Limit is not null,
        };
    }
}
