using Endurance.Studies.GroundTest;

namespace Endurance.Studies.Reconciliation;

/// <summary>One thing that may be wrong with the aircraft, or with the meter, as a change to what is simulated.</summary>
internal sealed record Fault
{
    public required FaultKind Kind { get; init; }

    /// <summary>Name of the part; of a meter, the quantity it shows.</summary>
    public required string Part { get; init; }

    /// <summary>What is so, as part of a sentence.</summary>
    public required string Label { get; init; }

    /// <summary>The number that shows it, with its unit.</summary>
    public string Value { get; init; } = "";

    /// <summary>The aircraft at a point, with the fault in it.</summary>
    public Func<TestSetup, TestSetup> Applied { get; init; } = setup => setup;

    /// <summary>What the meter then shows of a value that is so.</summary>
    public Func<ExpectedReading, double, double> Shown { get; init; } = (_, value) => value;
}
