using Endurance.Scenarios;

namespace Endurance.Simulation.Events;

/// <summary>One timeline step of a run and how near it is to being carried out.</summary>
internal sealed class WaitingStep
{
    public WaitingStep(TimelineStep step, CompiledAction[] actions, Func<string, int> nodeOf)
    {
        Actions = actions;
        switch (step.Trigger)
        {
            case AtTime at:
                Due = at.Time.Seconds;
                break;
            case WhenBelow low:
                WaitsForBus = true;
                Bus = nodeOf(low.Bus);
                Threshold = low.Below.Volts;
                Hold = low.For.Seconds;
                Cause = low;
                break;
            default:
                throw new ArgumentException("Unknown kind of trigger.", nameof(step));
        }
    }

    public CompiledAction[] Actions { get; }

    /// <summary>Seconds; positive infinity while its bus has not gone below.</summary>
    public double Due { get; private set; } = double.PositiveInfinity;

    public bool WaitsForBus { get; }

    public int Bus { get; }

    /// <summary>Volts.</summary>
    public double Threshold { get; }

    /// <summary>Seconds below before it is due.</summary>
    public double Hold { get; }

    /// <summary><see langword="null"/> for a step at a time.</summary>
    public WhenBelow? Cause { get; }

    /// <summary>Its bus is below its threshold.</summary>
    public bool IsBelow { get; private set; }

    /// <summary>It has been carried out.</summary>
    public bool IsSpent { get; private set; }

    public bool IsDueAt(double seconds) => !IsSpent && Due <= seconds;

    public void Spend() => IsSpent = true;

    /// <summary>The bus has crossed the threshold, or exceeded it by the hysteresis.</summary>
    public void Cross(double seconds)
    {
        IsBelow = !IsBelow;
        Due = IsBelow ? seconds + Hold : double.PositiveInfinity;
    }
}
