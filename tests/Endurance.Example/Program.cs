using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using Endurance.Yaml;

var read = ScenarioReader.ReadFile(args[0]);
Console.Error.Write(DiagnosticRenderer.Render(read.Diagnostics));
if (read.Scenario is not { } scenario)
    return 2;
foreach (var result in FailureCaseStudy.Run(scenario, scenario.FailureCases, new SimulationOptions(), CancellationToken.None))
    Console.WriteLine(FormattableString.Invariant($"{result.Name}: {result.LimitedBy ?? "nothing"} lost at {result.Endurance?.Minutes:0.0} min, {result.Verdict}"));
return 0;
