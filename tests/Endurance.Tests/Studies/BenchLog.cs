using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.BatteryFit;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

/// <summary>Logs that the simulator writes of a battery whose parameters are known.</summary>
internal static class BenchLog
{
    public const double Exponent = 1.15;
    public const double Milliohms = 25;

    /// <summary>18 Ah at 20 h, exponent 1.15, 25 mohm.</summary>
    public static Battery Bench => Battery(
        "bench", "bus", 18, 20, Exponent, Table((0, 10.8), (10, 11.6), (50, 12.2), (100, 12.8)), PiecewiseLinear.Constant(Milliohms));

    /// <summary>Discharges to exhaustion one after the other, rest before and after each.</summary>
    /// <param name="battery">Full at the start of each.</param>
    /// <param name="hasPulses">Whether the current is trebled for a minute now and then.</param>
    /// <param name="amperes">Of each discharge.</param>
    public static ImmutableArray<LogSample> Of(Battery battery, bool hasPulses, params double[] amperes)
    {
        var log = new List<LogSample>();
        double start = 0;
        foreach (var drain in amperes)
        {
            for (var seconds = 0; seconds < 600; seconds += 60)
                log.Add(new LogSample(start + seconds, battery.Emf.At(1), 0, 25));
            start += 600;
            var points = Discharge(battery, drain, hasPulses);
            log.AddRange(points.Select(point => new LogSample(start + point.Seconds, point.Volts, point.Amperes, null)));
            start += points[^1].Seconds;
            log.Add(new LogSample(start + 20, battery.Emf.At(0), 0, null));
            start += 4000;
        }

        return [.. log];
    }

    private static List<RunPoint> Discharge(Battery battery, double amperes, bool hasPulses)
    {
        var horizon = battery.LifetimeAt(Current.FromAmperes(amperes)).Hours * 1.5;
        var scenario = Scenario(horizon) with
        {
            Buses = [Bus("bus")],
            Batteries = [battery],
            Loads = [Amperes("drain", "bus", amperes), Amperes("pulse", "bus", 2 * amperes) with { IsOn = false }],
        };
        TimelineStep[] pulses = [.. Enumerable.Range(1, 3).SelectMany(i => new[]
        {
            At(30 * i, (ActionVerb.Connect, "pulse")), At((30 * i) + 1, (ActionVerb.Shed, "pulse")),
        })];
        var trace = scenario.Run(Case(hasPulses ? pulses : []), new SimulationOptions { SampleInterval = Duration.FromSeconds(10) }).Trace!;
        var points = new List<RunPoint>();
        for (var i = 0; i < trace.Seconds.Length; i++)
        {
            var point = new RunPoint(trace.Seconds[i], trace.BusVolts[0].Values[i], trace.BatteryAmperes[0].Values[i]);
            if (point.Volts <= 1)
                continue;
            if (points.Count > 0 && points[^1].Seconds >= point.Seconds)
                points.RemoveAt(points.Count - 1);
            points.Add(point);
        }

        return points;
    }
}
