namespace Endurance.Cli.Tests;

/// <summary>Runs and passes, with every kind of text that could break a page.</summary>
internal static class HostileScenario
{
    public const string Text = """
        # </pre><script>document.title = "taken"</script> & "quotes"
        endurance: 1
        title: "Bench <script>alert(1)</script> & \"quotes\" 'x' שלום עולם"
        system: 14 V
        horizon: 30 min
        batteries:
          بطارية_الطائرة: {bus: main_bus, capacity: 18 Ah, rate: 20 h, peukert: 1, resistance: 9 mohm, emf: [[0 %, 11.0 V], [100 %, 12.8 V]]}
        buses:
          main_bus: {cutoff: 10.5 V}
          WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW: {cutoff: 10 V}
        feeds:
          feed_with_a_name_that_goes_on_and_on_and_on_and_on_and_on_on: {from: main_bus, to: WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW, wire: {gauge: 14 AWG, length: 6 ft}, breaker: 10 A}
          电子飞行显示器主显示屏电子飞行显示器主显示屏电子飞行显示器: {from: main_bus, to: WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW, wire: {gauge: 14 AWG, length: 6 ft}, breaker: 10 A}
        loads:
          תצוגה_ראשית: {bus: main_bus, current: 2 A, minimum: 10 V, essential: true}
          电子飞行显示器主显示屏: {bus: WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW, current: 2 A, minimum: 10 V, essential: true}
        failure_cases:
          تفريغ: {timeline: []}
        requirements:
          - {case: تفريغ, loads: essential, endure: 20 min}

        """;
}
