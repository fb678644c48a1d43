using Endurance.Quantities;
using Endurance.Simulation;

namespace Endurance.Fuzz;

/// <summary>Two runs of one case tell the same.</summary>
internal static class Agreement
{
    /// <summary>Minutes that the order of the parts may move: each event is located to 1 ms, and what follows it moves along.</summary>
    public const double OrderMinutes = 1e-3;

    /// <summary>Minutes that half the tolerance may move.</summary>
    public const double ToleranceMinutes = 0.01;

    /// <exception cref="FuzzException">A time differs by more than the bound, or a reason differs.</exception>
    public static void Check(string what, SimulationResult expected, SimulationResult actual, double minutes)
    {
        void Same(string name, Duration? a, Duration? b)
        {
            if (a is null != b is null || Math.Abs((a?.Minutes ?? 0) - (b?.Minutes ?? 0)) > minutes)
                throw new FuzzException($"{what}: {name} {a?.Minutes} and {b?.Minutes} min");
        }

        foreach (var load in expected.Loads)
        {
            var other = actual.Loads.Single(part => string.Equals(part.Name, load.Name, StringComparison.Ordinal));
            Same(load.Name, load.TimePowered, other.TimePowered);
            Same(load.Name + " for good", load.TimeLostForGood, other.TimeLostForGood);
            if (load.LostBecause != other.LostBecause)
                throw new FuzzException($"{what}: {load.Name} {load.LostBecause} and {other.LostBecause}");
        }

        foreach (var bus in expected.Buses)
        {
            var other = actual.Buses.Single(part => string.Equals(part.Name, bus.Name, StringComparison.Ordinal));
            Same(bus.Name, bus.TimeToCutoff, other.TimeToCutoff);
            Same(bus.Name + " for good", bus.TimeToCutoffForGood, other.TimeToCutoffForGood);
        }

        foreach (var battery in expected.Batteries)
            Same(battery.Name, battery.TimeToExhaustion, actual.Batteries.Single(part => string.Equals(part.Name, battery.Name, StringComparison.Ordinal)).TimeToExhaustion);
    }
}
