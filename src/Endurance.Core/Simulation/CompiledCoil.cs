namespace Endurance.Simulation;

/// <summary>A contactor's coil and when it moves the contacts.</summary>
internal sealed class CompiledCoil
{
    /// <summary>Index of the feed whose contactor it is.</summary>
    public required int Feed { get; init; }

    /// <summary>Node that feeds it.</summary>
    public required int Node { get; init; }

    /// <summary>What it draws while it holds; <see langword="null"/>: nothing is modelled.</summary>
    public required CompiledLoad? Holding { get; init; }

    /// <summary>What it draws until the contacts have moved; <see langword="null"/>: the same.</summary>
    public CompiledLoad? PullingIn { get; init; }

    /// <summary>Volts; negative infinity when any will do.</summary>
    public double PullsInAbove { get; init; } = double.NegativeInfinity;

    /// <summary>Volts; negative infinity when it never drops out.</summary>
    public double DropsOutBelow { get; init; } = double.NegativeInfinity;

    public bool IsNormallyClosed { get; init; }

    /// <summary>Whether the voltage at the coil decides anything.</summary>
    public bool FollowsVoltage => double.IsFinite(PullsInAbove) || double.IsFinite(DropsOutBelow);
}
