using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;

namespace Endurance.Studies.SingleFailures;

/// <summary>Fails every part in every way, on its own and in each failure case.</summary>
public static class SingleFailureStudy
{
    /// <summary>Name of the case in which nothing else fails.</summary>
    public const string OnItsOwn = "on its own";

    /// <summary>One row a failure and case, in the order of <see cref="PartFailures.Of"/>, then of the cases.</summary>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ImmutableArray<FailureRow> Run(Scenario scenario, SingleFailureOptions options, CancellationToken cancellation = default)
    {
        ImmutableArray<FailureCase> cases = [new FailureCase { Name = OnItsOwn }, .. scenario.FailureCases];
        var normal = Revelation.Watched(scenario, cases[0], options.Simulation, cancellation);
        var single = PartFailures.Of(scenario);
        var trials = options.Pairs ? [.. Pairs(single)] : single.Select(failure => (PartFailure[])[failure]).ToArray();
        var revealed = new (string By, bool IsHidden)[trials.Length];
        StudyLoop.For(trials.Length, cancellation, i => revealed[i] = Revelation.Of(scenario, normal, trials[i], options.Simulation, cancellation));
        var work = trials.Index().SelectMany(trial => cases.Where(one => trial.Item.All(failure => Fits(failure, one))).Select(one => (trial.Index, one))).ToArray();
        var rows = new FailureRow[work.Length];
        var done = 0;
        StudyLoop.For(work.Length, cancellation, i =>
        {
            var (trial, one) = work[i];
            var row = RunOne(scenario, trials[trial], one, options.Simulation, cancellation);
            rows[i] = row with { RevealedBy = revealed[trial].By, IsHidden = revealed[trial].IsHidden };
            options.Progress?.Invoke(Interlocked.Increment(ref done), work.Length);
        });
        return [.. rows];
    }

    /// <summary>Rows that single failures of a scenario have.</summary>
    internal static int CountRows(Scenario scenario) =>
        PartFailures.Of(scenario).Sum(failure => scenario.FailureCases.Append(new FailureCase { Name = OnItsOwn }).Count(one => Fits(failure, one)));

    private static bool Fits(PartFailure failure, FailureCase one) =>
        failure.Case is null || string.Equals(failure.Case, one.Name, StringComparison.Ordinal);

    private static IEnumerable<PartFailure[]> Pairs(ImmutableArray<PartFailure> single)
    {
        for (var i = 0; i < single.Length; i++)
        {
            for (var j = i + 1; j < single.Length; j++)
            {
                if (!string.Equals(single[i].Part, single[j].Part, StringComparison.Ordinal))
                    yield return [single[i], single[j]];
            }
        }
    }

    private static FailureRow RunOne(Scenario scenario, PartFailure[] failures, FailureCase one, SimulationOptions options, CancellationToken cancellation)
    {
        var (failed, changed) = Apply(scenario, one, failures);
        var judged = Judgement.Of(failed, changed, new Simulator(failed).RunUntilBreakOff(changed, options, cancellation));
        var essential = judged.Run.Loads.Where(load => scenario.EssentialLoads.Contains(load.Name)).ToArray();
        return new FailureRow
        {
            Part = string.Join(" + ", failures.Select(failure => failure.Part)),
            Mode = string.Join(" + ", failures.Select(failure => failure.Word)),
            Case = one.Name,
            Endurance = judged.Endurance,
            Verdict = judged.Verdict,
            Lost = Lost(judged, essential),
            Loads = [.. essential.Select(load => load.TimePowered)],
            BreakOff = judged.BreakOff,
            RevealedBy = "",
            IsHidden = false,
        };
    }

    internal static (Scenario Scenario, FailureCase Case) Apply(Scenario scenario, FailureCase one, PartFailure[] failures)
    {
        var (failed, changed) = (scenario, one);
        // Steps are left out by their place in the case as written, so the last one goes first and nothing is put in before.
        foreach (var failure in Enumerable.Reverse(failures))
            (failed, changed) = failure.Apply(failed, changed);
        return (failed, changed);
    }

    private static ImmutableArray<string> Lost(CaseResult judged, LoadOutcome[] essential)
    {
        var required = judged.Requirements.Where(result => result.Requirement.Bus is null).ToArray();
        return [.. essential.Where(load => required.Length == 0
            ? load.TimePowered is not null
            : required.Any(result => result.Requirement.Loads.Contains(load.Name)
                && (result.Requirement.DipsAllowed ? load.TimeLostForGood : load.TimePowered) < result.Requirement.Endure)).Select(load => load.Name)];
    }
}
