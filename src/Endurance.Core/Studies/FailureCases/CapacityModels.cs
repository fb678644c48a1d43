using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.FailureCases;

/// <summary>Sets the two capacity models side by side where a battery's current changes so much that they differ.</summary>
/// <remarks>When the current falls the kinetic model lasts longer, when it rises shorter; neither bounds the other.</remarks>
internal sealed class CapacityModels
{
    /// <summary>Ratio of the largest to the smallest discharge current above which both models are asked.</summary>
    private const double LargestRatio = 2;

    private readonly Scenario scenario;
    private readonly Lazy<(Scenario Scenario, Simulator Simulator)> other;
    private readonly bool isKinetic;

    public CapacityModels(Scenario scenario)
    {
        this.scenario = scenario;
        isKinetic = scenario.Batteries.Any(battery => battery.CapacityModel == CapacityModel.Kinetic);
        var model = isKinetic ? CapacityModel.Peukert : CapacityModel.Kinetic;
        other = new(() =>
        {
            var changed = scenario with { Batteries = [.. scenario.Batteries.Select(battery => battery with { CapacityModel = model })] };
            return (changed, new Simulator(changed));
        });
    }

    /// <summary>Adds the other model's answer, and a caution where a requirement is met by one of the two only.</summary>
    public CaseResult Compare(CaseResult judged, FailureCase failureCase, SimulationOptions options, CancellationToken cancellation)
    {
        if (judged.BreakOff is not null || !judged.Run.Batteries.Any(Varies))
            return judged;
        var run = other.Value.Simulator.RunUntilBreakOff(failureCase, options with { SampleInterval = null }, cancellation);
        var second = Judgement.Of(other.Value.Scenario, failureCase, run);
        var (kinetic, peukert) = isKinetic ? (judged, second) : (second, judged);
        return judged with
        {
            Kinetic = new ModelAnswer(kinetic.Endurance, kinetic.LimitedBy),
            Peukert = new ModelAnswer(peukert.Endurance, peukert.LimitedBy),
            Findings = [.. judged.Findings, .. second.BreakOff is { } breakOff ? [BreaksOff(breakOff)] : Disagreements(judged, second)],
        };
    }

    private Finding BreaksOff(BreakOff breakOff) => new(Judgement.CodeOf(breakOff.Cause), Severity.Warning, string.Join(", ", breakOff.Parts),
        FormattableString.Invariant($"{breakOff.Time.Minutes:F1} min"),
        $"By the {(isKinetic ? "peukert" : "kinetic")} capacity model {breakOff.Words}, and its answer ends there. {breakOff.Remedy}");

    private static bool Varies(BatteryOutcome battery) =>
        battery.LowestDischarge is { } least && battery.HighestCurrent > least * LargestRatio;

    private IEnumerable<Finding> Disagreements(CaseResult own, CaseResult second) =>
        from pair in own.Requirements.Zip(second.Requirements)
        where pair.First.Verdict != pair.Second.Verdict
        let met = (pair.First.Verdict == Verdict.Pass) == isKinetic ? "kinetic" : "peukert"
        select new Finding("capacity-models-disagree", Severity.Caution, pair.First.LimitedBy ?? pair.Second.LimitedBy ?? scenario.Title,
            FormattableString.Invariant($"{pair.First.Requirement.Endure.Minutes:G6} min"),
            FormattableString.Invariant($"The {pair.First.Requirement.Endure.Minutes:G6} min required are met by the {met} capacity model only. Treat them as not met, or find out by a timed discharge."));
}
