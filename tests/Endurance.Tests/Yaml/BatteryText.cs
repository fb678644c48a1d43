using Endurance.Components;
using Endurance.Scenarios;
using Endurance.Yaml;

namespace Endurance.Tests.Yaml;

/// <summary>Scenarios of one battery and one load, as a file would write them.</summary>
internal static class BatteryText
{
    public const string Plain = "resistance: 1 mohm, emf: [[0 %, 12 V], [100 %, 12 V]]";

    /// <summary>A battery from the keys between its braces.</summary>
    public static Battery Battery(string keys, string system = "14 V") => Scenario(keys, "current: 1 A", system).Batteries[0];

    /// <summary>The battery with one load on its bus.</summary>
    public static Scenario Scenario(string keys, string load, string system = "14 V", string cutoff = "") =>
        Read(keys, load, system, cutoff).Scenario ?? throw new InvalidOperationException(DiagnosticRenderer.Render(Read(keys, load, system, cutoff).Diagnostics));

    public static ScenarioReadResult Read(string keys, string load, string system = "14 V", string cutoff = "") => ScenarioReader.ReadText("text.yaml",
        $$"""
        endurance: 1
        system: {{system}}
        horizon: 60 h
        batteries:
          battery: {bus: bus, {{keys}}}
        buses:
          bus: { {{cutoff}} }
        loads:
          load: {bus: bus, {{load}}, essential: true}
        failure_cases:
          case: {timeline: []}
        """);
}
