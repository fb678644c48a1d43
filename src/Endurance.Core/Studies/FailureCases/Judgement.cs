using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.FailureCases;

/// <summary>Sets what a run showed against what was required.</summary>
internal static class Judgement
{
    /// <summary>Stands for the limiting part where a step shed every load of a requirement.</summary>
    private const string Shed = "shed";

    /// <summary>An instant and what was lost then; no instant: not lost within the horizon.</summary>
    private readonly record struct Loss(Duration? Time, string? Part)
    {
        public static Loss Earlier(Loss a, Loss b) =>
            b.Time is { } second && (a.Time is not { } first || second < first) ? b : a;
    }

    public static CaseResult Of(Scenario scenario, FailureCase failureCase, SimulationResult run)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        if (run.BreakOff is { } breakOff)
            findings.Add(BreaksOff(failureCase, breakOff));
        ImmutableArray<RequirementResult> judged =
            [.. scenario.Requirements.Where(requirement => requirement.AppliesTo(failureCase)).Select(requirement => Judge(requirement, run, findings))];
        var loss = judged.IsEmpty
            ? Earlier(FirstEssentialLoss(scenario, run), run.BreakOff)
            : judged.Select(result => new Loss(result.Endurance, result.LimitedBy)).Aggregate(Loss.Earlier);
        var verdict = run.BreakOff is not null ? Verdict.Fail
            : judged.IsEmpty ? Verdict.None
            : judged.Any(result => result.Verdict == Verdict.Fail) ? Verdict.Fail : Verdict.Pass;
        return new CaseResult
        {
            Name = failureCase.Name,
            Verdict = verdict,
            Endurance = loss.Time,
            AfterRecognition = After(loss.Time, run.Recognition),
            LimitedBy = loss.Part,
            Requirements = judged,
            Run = UntilBreakOff(run),
            Findings = findings.ToImmutable(),
            Assumptions = scenario.Assumptions,
        };
    }

    private static Duration? After(Duration? endurance, Duration? recognition) =>
        endurance is { } lost && recognition is { } recognised ? (lost > recognised ? lost - recognised : Duration.Zero) : null;

    private static Loss FirstEssentialLoss(Scenario scenario, SimulationResult run)
    {
        var loss = default(Loss);
        foreach (var load in run.Loads.Where(load => scenario.EssentialLoads.Contains(load.Name)))
            loss = Loss.Earlier(loss, new Loss(load.TimePowered, load.Name));
        foreach (var bus in run.Buses)
            loss = Loss.Earlier(loss, new Loss(bus.TimeToCutoff, bus.Name));
        return loss;
    }

    private static RequirementResult Judge(Requirement requirement, SimulationResult run, ImmutableArray<Finding>.Builder findings)
    {
        var loss = requirement.Bus is { } bus
            ? BusLoss(requirement, run.Buses.First(outcome => string.Equals(outcome.Name, bus, StringComparison.Ordinal)))
            : LoadsLoss(requirement, run, findings);
        loss = Earlier(loss, run.BreakOff);
        return new RequirementResult
        {
            Requirement = requirement,
            Endurance = loss.Time,
            LimitedBy = loss.Part,
            Verdict = run.BreakOff is not null || (loss.Time is { } time && time < requirement.Endure) ? Verdict.Fail : Verdict.Pass,
        };
    }

    private static Loss Earlier(Loss loss, BreakOff? breakOff) =>
        breakOff is null ? loss : Loss.Earlier(loss, new Loss(breakOff.Time, string.Join(", ", breakOff.Parts)));

    /// <summary>Nothing can be counted on from where a case could not be computed further, so whatever is not lost by then counts as lost then.</summary>
    private static SimulationResult UntilBreakOff(SimulationResult run) => run.BreakOff is not { } breakOff ? run : run with
    {
        Loads = [.. run.Loads.Select(load => load.WasConnected && load.TimeShed is null ? load with { TimePowered = load.TimePowered ?? breakOff.Time, TimeLostForGood = load.TimeLostForGood ?? breakOff.Time } : load)],
        Buses = [.. run.Buses.Select(bus => bus.Cutoff is not null ? bus with { TimeToCutoff = bus.TimeToCutoff ?? breakOff.Time, TimeToCutoffForGood = bus.TimeToCutoffForGood ?? breakOff.Time } : bus)],
    };

    /// <summary>Of the finding that tells a break-off.</summary>
    public static string CodeOf(BreakOffCause cause) => cause switch
    {
        BreakOffCause.Chattering => "chattering",
        BreakOffCause.TooStiff => "too-stiff",
        _ => "not-solved",
    };

    private static Finding BreaksOff(FailureCase failureCase, BreakOff breakOff)
    {
        var minutes = FormattableString.Invariant($"{breakOff.Time.Minutes:F1} min");
        return new Finding(CodeOf(breakOff.Cause), Severity.Error, failureCase.Name, minutes,
            $"{breakOff.Words} at {minutes}. The run breaks off there, nothing counts as powered from then on, and the case fails whatever was met before. {breakOff.Remedy}");
    }

    private static Loss BusLoss(Requirement requirement, BusOutcome bus) =>
        new Loss(requirement.DipsAllowed ? bus.TimeToCutoffForGood : bus.TimeToCutoff, bus.Name) is { Time: not null } loss ? loss : default;

    private static Loss LoadsLoss(Requirement requirement, SimulationResult run, ImmutableArray<Finding>.Builder findings)
    {
        var loss = default(Loss);
        var lastLeaves = Duration.Zero;
        var anyStays = false;
        foreach (var load in run.Loads.Where(load => requirement.Loads.Contains(load.Name)))
        {
            var time = requirement.DipsAllowed ? load.TimeLostForGood : load.TimePowered;
            if (time is not null)
                loss = Loss.Earlier(loss, new Loss(time, load.Name));
            var leaves = load.WasConnected ? load.TimeShed : Duration.Zero;
            if (leaves is not { } left || left >= requirement.Endure)
            {
                anyStays = true;
                continue;
            }

            lastLeaves = left > lastLeaves ? left : lastLeaves;
            findings.Add(Leaves(requirement, load, left));
        }

        return anyStays ? loss : Loss.Earlier(loss, new Loss(lastLeaves, Shed));
    }

    private static Finding Leaves(Requirement requirement, LoadOutcome load, Duration left)
    {
        var minutes = FormattableString.Invariant($"{left.Minutes:F1} min");
        var message = load.WasConnected
            ? FormattableString.Invariant($"{load.Name} is shed at {minutes}, before the {requirement.Endure.Minutes:G6} min required of it, and leaves the requirement then.")
            : $"{load.Name} is never connected in this case, so the requirement says nothing about it.";
        return new Finding("required-load-shed", Severity.Caution, load.Name, minutes, message);
    }
}
