using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using Endurance.Yaml;

namespace Endurance.Fuzz;

/// <summary>What must hold for every network that reads without an error.</summary>
internal static class NetworkOracle
{
    /// <summary>One seed in so many is also simulated with its parts reversed, at half the tolerance, and as a whole study.</summary>
    public const int Subset = 8;

    private const string Name = "drawn.yaml";

    /// <summary>Runs the network of a seed.</summary>
    /// <exception cref="FuzzException">Something does not hold.</exception>
    public static Verdict Check(int seed) => Check(seed, isThorough: seed % Subset == 0);

    /// <summary>The same, always with its parts reversed and at half the tolerance too.</summary>
    /// <exception cref="FuzzException">Something does not hold.</exception>
    public static Verdict CheckAgreement(int seed) => Check(seed, isThorough: true);

    private static Verdict Check(int seed, bool isThorough)
    {
        try
        {
            return CheckText(NetworkText.Of(seed), isThorough);
        }
        catch (UnsolvedNetworkException) when (NetworkText.IsWild(seed) || FeedsItself(ScenarioReader.ReadText(Name, NetworkText.Of(seed))))
        {
            return Verdict.Unsolved;
        }
    }

    /// <summary>Reads a text and runs its first failure case.</summary>
    /// <exception cref="FuzzException">Something does not hold.</exception>
    public static Verdict CheckText(string text, bool isThorough)
    {
        var read = ScenarioReader.ReadText(Name, text);
        if (read.Scenario is not { } scenario)
            return read.Diagnostics.Any(told => told.Severity == Severity.Error) ? Verdict.Refused : throw new FuzzException("no scenario and no error");
        if (scenario.FailureCases.IsEmpty)
            return Verdict.Refused;
        var result = Run(scenario, scenario.FailureCases[0], new SimulationOptions { SampleInterval = scenario.Horizon / 7 });
        var mayCloseACircle = scenario.Chargers.Length > 0 && text.Contains("short: [", StringComparison.Ordinal);
        if (isThorough && !mayCloseACircle && !FeedsItself(read))
            Compare(scenario, result);
        return result is null ? Verdict.Chattered : Verdict.Held;
    }

    /// <summary>Whether some charger is warned of: how much goes round in a circle is decided by next to nothing.</summary>
    private static bool FeedsItself(ScenarioReadResult read) => read.Diagnostics.Any(told => told.Code is "charger-feeds-itself");

    /// <summary><see langword="null"/> when parts chatter.</summary>
    public static SimulationResult? Run(Scenario scenario, FailureCase failureCase, SimulationOptions options)
    {
        try
        {
            var run = new SimulationRun(scenario, NetworkCompiler.Compile(scenario), failureCase, options);
            run.Begin();
            while (!run.IsFinished)
                run.Advance(); // ends by itself after as many steps as no case needs

            var result = run.Result();
            ResultLaws.Check(scenario, result, run.SourceJoules);
            return result;
        }
        catch (BrokenOffException)
        {
            return null;
        }
    }

    private static void Compare(Scenario scenario, SimulationResult? result)
    {
        var failureCase = scenario.FailureCases[0];
        var options = new SimulationOptions();
        var reversed = Run(Reversed(scenario), failureCase, options);
        var finer = Run(scenario, failureCase, options with { Tolerance = options.Tolerance / 2 });
        if (result is null != reversed is null)
            throw new FuzzException("chatters in one order of the parts only");
        if (result is null || reversed is null)
            return;
        Agreement.Check("parts reversed", result, reversed, Agreement.OrderMinutes);
        if (finer is null)
            throw new FuzzException("chatters at half the tolerance only");
        Agreement.Check("half the tolerance", result, finer, Agreement.ToleranceMinutes);
        CheckStudy(scenario);
    }

    private static void CheckStudy(Scenario scenario)
    {
        var cases = FailureCaseStudy.Run(scenario, scenario.FailureCases, new SimulationOptions());
        foreach (var finding in cases.SelectMany(judged => judged.Findings))
        {
            if (finding.Message.Contains("NaN", StringComparison.Ordinal) || finding.Message.Contains('\u221E'))
                throw new FuzzException($"finding {finding.Code}: {finding.Message}");
        }
    }

    private static Scenario Reversed(Scenario scenario) => scenario with
    {
        Buses = [.. scenario.Buses.Reverse()],
        Batteries = [.. scenario.Batteries.Reverse()],
        Alternators = [.. scenario.Alternators.Reverse()],
        Chargers = [.. scenario.Chargers.Reverse()],
        Feeds = [.. scenario.Feeds.Reverse()],
        Grounds = [.. scenario.Grounds.Reverse()],
        Loads = [.. scenario.Loads.Reverse()],
        Warnings = [.. scenario.Warnings.Reverse()],
    };
}
