using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Findings;
using Endurance.Quantities;

namespace Endurance.Studies.BatteryFit;

/// <summary>A battery as its log describes it.</summary>
public sealed record BatteryFitResult
{
    public required FoundDischarges Discharges { get; init; }

    /// <summary>Every run of the log, in order.</summary>
    public required ImmutableArray<RunFit> Runs { get; init; }

    /// <summary>Voltages that minutes are counted to, highest first; the last one ends the discharge.</summary>
    public required ImmutableArray<Voltage> EndVoltages { get; init; }

    public required LifetimeLaw Law { get; init; }

    /// <summary>By rising charge, 0 to 1.</summary>
    public required ImmutableArray<EmfKnot> Emf { get; init; }

    public required StepResistance Steps { get; init; }

    /// <summary>That of the written battery.</summary>
    public required Resistance Resistance { get; init; }

    /// <summary>Given or taken from steps; otherwise the EMF table holds the drop of the measured currents.</summary>
    public required bool IsResistanceKnown { get; init; }

    /// <summary>Taken from steps; a given one goes before.</summary>
    public required bool IsResistanceMeasured { get; init; }

    /// <summary>What a scenario gets: the exponent is at least 1.</summary>
    public required Battery Written { get; init; }

    /// <summary>Capacity left at the rating's own rate as a fraction of the label; <see langword="null"/>: no rating was given.</summary>
    public required FittedValue? Health { get; init; }

    /// <summary>Of each run of the fit; empty without a rating.</summary>
    public required ImmutableArray<CapacityTest> Tests { get; init; }

    public required ImmutableArray<Finding> Findings { get; init; }

    public bool IsPassed => Tests.All(test => test.IsPassed);
}
