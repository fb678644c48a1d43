using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Simulation;

namespace Endurance.Studies.FailureCases;

/// <summary>One failure case, simulated and judged.</summary>
public sealed record CaseResult
{
    public required string Name { get; init; }

    public required Verdict Verdict { get; init; }

    /// <summary>Earliest loss over the requirements that apply; with none, over essential loads and buses with a cutoff. <see langword="null"/>: nothing is lost within the horizon.</summary>
    public required Duration? Endurance { get; init; }

    /// <summary>Endurance less the recognition time, not below zero; <see langword="null"/> when either is absent.</summary>
    public required Duration? AfterRecognition { get; init; }

    /// <summary>What is lost first; <see langword="null"/> when nothing is.</summary>
    public required string? LimitedBy { get; init; }

    public required ImmutableArray<RequirementResult> Requirements { get; init; }

    /// <summary>The answer by the kinetic capacity model; <see langword="null"/> where no battery's current changes by more than 2:1, so that both models agree closely.</summary>
    public ModelAnswer? Kinetic { get; init; }

    /// <summary>The answer by the Peukert sum; present together with <see cref="Kinetic"/>.</summary>
    public ModelAnswer? Peukert { get; init; }

    /// <summary><see langword="null"/> where neither the case nor the scenario has a landing.</summary>
    public LandingReserve? LandingReserve { get; init; }

    /// <summary>Latest instant to begin the approach; <see langword="null"/> without a landing, and see <see cref="LandingReserve"/>.</summary>
    public Duration? LatestApproach => LandingReserve?.Latest;

    /// <summary>The case cannot be run to its end: see <see cref="SimulationResult.BreakOff"/>. It fails, its endurance ends there at the latest, and nothing but that is found.</summary>
    public BreakOff? BreakOff => Run.BreakOff;

    public required SimulationResult Run { get; init; }

    /// <summary>Of the run and of the judgement.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    public required ImmutableArray<Assumption> Assumptions { get; init; }
}
