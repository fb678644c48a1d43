using Endurance.Scenarios;

namespace Endurance.Simulation.Events;

/// <summary>One timeline step of a run and how near it is to being carried out.</summary>
internal sealed class WaitingStep
{
    public required CompiledAction[] Actions { get; init; }

    /// <summary>As the scenario has it.</summary>
    public required Trigger Trigger { get; init; }

    /// <summary>Index of the bus it waits for; -1 when it waits for none.</summary>
    public int Bus { get; init; } = -1;

    /// <summary>Volts.</summary>
    public double Threshold { get; init; }

    /// <summary>Seconds below before it is due, or from a warning to the action.</summary>
    public double Hold { get; init; }

    /// <summary>Index of the warning it waits for; -1 when it waits for none.</summary>
    public int Warning { get; init; } = -1;

    /// <summary>Carried out this long after this step, in seconds, to undo it; <see langword="null"/>: nothing is undone.</summary>
    public WaitingStep? Undo { get; init; }

    /// <summary>Seconds from this step to its <see cref="Undo"/>.</summary>
    public double Lasts { get; init; }

    /// <summary>Undoes another step; its trigger is that step's.</summary>
    public bool IsUndo { get; init; }

    /// <summary>Seconds; positive infinity while what it waits for has not come.</summary>
    public double Due { get; set; } = double.PositiveInfinity;

    public bool WaitsForBus => Bus >= 0;

    /// <summary>Comes by the clock alone.</summary>
    public bool IsTimed => Bus < 0 && Warning < 0;

    /// <summary>Its bus is below its threshold.</summary>
    public bool IsBelow { get; private set; }

    /// <summary>It has been carried out.</summary>
    public bool IsSpent { get; private set; }

    public bool IsDueAt(double seconds) => !IsSpent && Due <= seconds;

    public void Spend(double seconds)
    {
        IsSpent = true;
        if (Undo is { } undo)
            undo.Due = seconds + Lasts;
    }

    /// <summary>The bus has crossed the threshold, or exceeded it by the hysteresis.</summary>
    public void Cross(double seconds)
    {
        IsBelow = !IsBelow;
        Due = IsBelow ? seconds + Hold : double.PositiveInfinity;
    }
}
