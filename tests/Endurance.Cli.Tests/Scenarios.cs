namespace Endurance.Cli.Tests;

/// <summary>Small scenarios, each made for one exit code.</summary>
internal static class Scenarios
{
    /// <summary>2 A from an 18 Ah battery for 30 min: nothing is lost.</summary>
    public static string Passing => Bench(requirement: "20 min");

    /// <summary>The battery holds for about nine hours, less than what is required.</summary>
    public static string Failing => Bench(requirement: "20 h", horizon: "24 h");

    /// <summary>In the first case the display pulls its bus down and is let go again without end; in the second it is shed before.</summary>
    public static string Chattering => Passing
        .Replace("resistance: 9 mohm", "resistance: 300 mohm", StringComparison.Ordinal)
        .Replace("minimum: 10 V", "minimum: 12.0 V, restart: 12.1 V", StringComparison.Ordinal)
        .Replace("horizon: 30 min", "horizon: 3 h", StringComparison.Ordinal);

    public static string Wrong => Passing.Replace("bus: main_bus, current: 2 A", "bus: main_buss, current: 2 A", StringComparison.Ordinal);

    /// <summary>Runs, with a warning: nothing feeds one bus.</summary>
    public static string Doubtful => Passing.Replace("main_bus: {cutoff: 10.5 V}", "main_bus: {cutoff: 10.5 V}\n  spare_bus: {}", StringComparison.Ordinal);

    /// <summary>With a warning, and forty cases in each of which a load drops out and comes back every second: work for many seconds.</summary>
    public static string Long => Doubtful
        .Replace("horizon: 30 min", "horizon: 2 h", StringComparison.Ordinal)
        .Replace("capacity: 18 Ah", "capacity: 10000 Ah", StringComparison.Ordinal)
        .Replace("current: 2 A, minimum: 10 V", "current: 400 A, minimum: 10 V, restart: 11 V, start_up: 1 s", StringComparison.Ordinal)
        .Replace("failure_cases:", "failure_cases:" + string.Concat(Enumerable.Range(1, 40).Select(number => $"\n  again_{number}: {{timeline: []}}")), StringComparison.Ordinal);

    private static string Bench(string requirement, string horizon = "30 min") =>
        $$"""
        endurance: 1
        title: Bench
        system: 14 V
        horizon: {{horizon}}
        batteries:
          ship_battery: {bus: main_bus, capacity: 18 Ah, rate: 20 h, peukert: 1, resistance: 9 mohm, emf: [[0 %, 11.0 V], [100 %, 12.8 V]]}
        buses:
          main_bus: {cutoff: 10.5 V}
        loads:
          display: {bus: main_bus, current: 2 A, minimum: 10 V, essential: true}
        failure_cases:
          plain_discharge:
            timeline: []
          display_shed:
            timeline:
              - {at: 5 min, shed: [display]}
        requirements:
          - {case: plain_discharge, loads: essential, endure: {{requirement}}}

        """;
}
