using System.Collections.Immutable;
using System.CommandLine;
using Endurance.Cli.Arguments;
using Endurance.Reports;
using Endurance.Reports.Plots;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;
using Endurance.Studies.SingleFailures;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance failures FILE</c>: what each failed part takes.</summary>
internal sealed class FailuresCommand
{
    private readonly StudyOptions _shared = new();

    private readonly Option<bool> _pairs = new("--pairs") { Description = "Every two parts at once, instead of every single one." };

    private readonly Option<string?> _case = new("--case")
    {
        Description = "The failure case whose matrix the table shows. Default: the first. --out draws all.",
        HelpName = "NAME",
        CustomParser = Word.For("--case"),
    };

    public static Command Create(Screen screen) => new FailuresCommand().Build(screen);

    private Command Build(Screen screen)
    {
        var command = new Command("failures", "Fails every part in every way, on its own and in each failure case.");
        _shared.AddTo(command, _pairs, _case);
        StudyExecution.Set(command, screen, _shared.Read, Refusal, Run);
        return command;
    }

    private static ImmutableArray<string> Cases(Scenario scenario) => [SingleFailureStudy.OnItsOwn, .. scenario.FailureCases.Select(one => one.Name)];

    private string? Refusal(ParseResult parse, Scenario scenario) =>
        parse.GetValue(_case) is { } name ? PartName.Unknown("--case", "failure case", "cases", name, Cases(scenario)) : null;

    private StudyOutput Run(ParseResult parse, Scenario scenario, StudyProgress progress, CancellationToken cancellation)
    {
        var options = new SingleFailureOptions { Pairs = parse.GetValue(_pairs), Progress = progress.Report };
        var rows = SingleFailureStudy.Run(scenario, options, cancellation);
        var singles = options.Pairs ? SingleFailureStudy.Run(scenario, new SingleFailureOptions(), cancellation) : [];
        var withoutFailure = FailureCaseStudy.Run(scenario, [new FailureCase { Name = SingleFailureStudy.OnItsOwn }, .. scenario.FailureCases], options.Simulation, cancellation);
        var standing = new FailureStanding(scenario, rows, withoutFailure, singles);
        return new StudyOutput
        {
            Json = () => FailureJson.Write(standing),
            Csv = () => FailureCsv.Write(scenario, rows),
            Document = () => FailureReport.Describe(standing, parse.GetValue(_case) ?? Cases(scenario)[1]),
            Plots = () => [.. Cases(scenario).Select(one => ($"failures-{FileStem.Of(one)}", FailureHeatMap.Describe(standing, one)))],
            IsMet = rows.All(row => row.Verdict != Verdict.Fail),
        };
    }
}
