using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Fuzz;

/// <summary>Laws that any one result obeys: finite numbers, times within the run, Kirchhoff at every sample, energy over the run.</summary>
internal static class ResultLaws
{
    private const double EnergyShare = 1e-6;

    /// <summary>Joules that the solver's nanoamperes at every bus may add up to over eight hours.</summary>
    private const double LeastJoules = 0.02;

    /// <summary>Amperes that may not balance at a bus, beside the same share of what flows there.</summary>
    private const double BusAmperes = 1e-6;

    /// <exception cref="FuzzException">A law does not hold.</exception>
    public static void Check(Scenario scenario, SimulationResult result, double sourceJoules)
    {
        CheckNumbers(result);
        CheckTimes(scenario, result);
        CheckEnergy(scenario, result, sourceJoules);
        if (result.Trace is { } trace)
        {
            CheckTrace(trace);
            CheckKirchhoff(scenario, trace);
        }
    }

    private static void CheckNumbers(SimulationResult result)
    {
        foreach (var bus in result.Buses)
            Finite(bus.Name, bus.StartVoltage.Volts, bus.LowestVoltage.Volts);
        foreach (var battery in result.Batteries)
        {
            Finite(battery.Name, battery.ChargeStart, battery.ChargeEnd, battery.Delivered.Coulombs, battery.Received.Coulombs, battery.DeliveredEnergy.Joules, battery.StartCurrent.Amperes);
            Finite(battery.Name, battery.HighestCurrent.Amperes, battery.LowestCurrent.Amperes, battery.CirculatingCurrent.Amperes, battery.LowestDischarge?.Amperes ?? 0);
            if (battery.ChargeEnd is < 0 or > 1 || battery.Delivered.Coulombs < 0 || battery.Received.Coulombs < 0)
                throw new FuzzException($"{battery.Name}: charge {battery.ChargeEnd}, delivered {battery.Delivered}, received {battery.Received}");
        }

        foreach (var feed in result.Feeds)
            Finite(feed.Name, feed.StartCurrent.Amperes, feed.HighestCurrent.Amperes, feed.LowestCurrent.Amperes, feed.HighestDiodePower?.Watts ?? 0, feed.HighestJunction?.Kelvin ?? 0, feed.ReverseCharge.Coulombs);
        foreach (var alternator in result.Alternators)
            Finite(alternator.Name, alternator.HighestCurrent.Amperes);
        foreach (var charger in result.Chargers)
            Finite(charger.Name, charger.HighestCurrent.Amperes);
        foreach (var protection in result.Protections)
            Finite(protection.Owner, protection.OpenedAt?.Amperes ?? 0);
        foreach (var warning in result.Warnings)
            Finite(warning.Name, [.. warning.ChargesWhenOn]);
    }

    private static void CheckTimes(Scenario scenario, SimulationResult result)
    {
        const double rounding = 1e-9;
        var most = scenario.Horizon.Seconds * (1 + rounding);
        void Within(string name, params ReadOnlySpan<Duration?> times)
        {
            foreach (var time in times)
            {
                if (time is { } given && !(given.Seconds >= 0 && given.Seconds <= most))
                    throw new FuzzException($"{name}: {given.Minutes} min lies outside the run");
            }
        }

        Within("end", result.End, result.Recognition);
        foreach (var load in result.Loads)
        {
            Within(load.Name, load.TimePowered, load.TimeLostForGood, load.TimeShed);
            if (load.TimePowered is null != load.LostBecause is null || load.TimePowered > load.TimeLostForGood)
                throw new FuzzException($"{load.Name}: powered {load.TimePowered?.Minutes} min, lost for good {load.TimeLostForGood?.Minutes} min, because {load.LostBecause}");
        }

        foreach (var bus in result.Buses)
            Within(bus.Name, bus.TimeToCutoff, bus.TimeToCutoffForGood);
        foreach (var battery in result.Batteries)
            Within(battery.Name, battery.TimeToExhaustion);
        foreach (var alternator in result.Alternators)
            Within(alternator.Name, alternator.TimeAlone, alternator.TimeUnexcited);
        foreach (var warning in result.Warnings)
            Within(warning.Name, warning.TimeOn);
        var last = 0.0;
        foreach (var told in result.Events)
        {
            Within(told.What, told.Time);
            if (told.Time.Seconds < last)
                throw new FuzzException($"the event {told.What} at {told.Time.Minutes} min stands after one at {last / 60} min");
            last = told.Time.Seconds;
        }
    }

    private static void CheckEnergy(Scenario scenario, SimulationResult result, double sourceJoules)
    {
        Finite("energy residual", result.EnergyResidual, sourceJoules);
        var scale = Math.Abs(sourceJoules);
        for (var i = 0; i < result.Batteries.Length; i++)
            scale = Math.Max(scale, result.Batteries[i].DeliveredEnergy.Joules + (result.Batteries[i].Received.Coulombs * scenario.Batteries[i].Emf.Y[^1]));
        if (Math.Abs(result.EnergyResidual * sourceJoules) > (EnergyShare * scale) + LeastJoules)
            throw new FuzzException($"{result.EnergyResidual * sourceJoules} J of {scale} J are not accounted for");
    }

    private static void CheckTrace(Trace trace)
    {
        foreach (var column in trace.BusVolts.Concat(trace.BatteryAmperes).Concat(trace.BatteryCharge).Concat(trace.FeedAmperes).Concat(trace.LoadAmperes))
            Finite(column.Name, [.. column.Values]);
    }

    /// <summary>The currents of the trace add up to nothing at each bus whose every branch it shows.</summary>
    private static void CheckKirchhoff(Scenario scenario, Trace trace)
    {
        var hidden = scenario.Alternators.SelectMany(part => new[] { part.Bus, part.Field?.Bus })
            .Concat(scenario.Chargers.SelectMany(part => new[] { part.From, part.To }))
            .Concat(scenario.Feeds.Where(part => part.Contactor?.Coil is not null).Select(part => part.Contactor!.CoilBus ?? part.From))
            .Concat(scenario.Loads.SelectMany(part => part.Inputs.Select(input => input.Bus)))
            .ToHashSet(StringComparer.Ordinal);
        foreach (var bus in scenario.Buses.Select(bus => bus.Name).Where(name => !hidden.Contains(name)))
        {
            bool Is(string name) => string.Equals(name, bus, StringComparison.Ordinal);
            for (var at = 0; at < trace.Seconds.Length; at++)
            {
                double sum = 0, flow = 0;
                void Add(double amperes)
                {
                    sum += amperes;
                    flow += Math.Abs(amperes);
                }

                for (var i = 0; i < scenario.Batteries.Length; i++)
                    Add(Is(scenario.Batteries[i].Bus) ? trace.BatteryAmperes[i].Values[at] : 0);
                for (var i = 0; i < scenario.Feeds.Length; i++)
                    Add(Is(scenario.Feeds[i].From) ? -trace.FeedAmperes[i].Values[at] : Is(scenario.Feeds[i].To) ? trace.FeedAmperes[i].Values[at] : 0);
                for (var i = 0; i < scenario.Loads.Length; i++)
                    Add(Is(scenario.Loads[i].Bus) ? -trace.LoadAmperes[i].Values[at] : 0);
                if (Math.Abs(sum) > BusAmperes * (1 + flow))
                    throw new FuzzException($"{sum} A of {flow} A do not balance at {bus} after {trace.Seconds[at]} s");
            }
        }
    }

    private static void Finite(string name, params ReadOnlySpan<double> values)
    {
        foreach (var value in values)
        {
            if (!double.IsFinite(value))
                throw new FuzzException($"{name}: {value}");
        }
    }
}
