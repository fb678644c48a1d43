using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Reports;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.Adjustment;
using Endurance.Studies.FailureCases;
using Endurance.Studies.SingleFailures;
using Endurance.Studies.Sizing;
using Endurance.Studies.Spread;
using Endurance.Studies.Sweeps;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reports;

/// <summary>One battery without Peukert and one display at 5 A: 12 min an ampere-hour, whatever the reports make of it.</summary>
internal static class StudyFixture
{
    public static readonly Scenario Scenario = Parts.Scenario() with
    {
        Title = "Bench",
        Buses = [Bus("main_bus")],
        Batteries = [Battery("main_battery", "main_bus", 10, 20, 1, PiecewiseLinear.Constant(12), PiecewiseLinear.Constant(10))],
        Loads = [Amperes("display", "main_bus", 5, 9)],
        FailureCases = [new FailureCase { Name = "engine_out", Timeline = [] }],
        Requirements = [new Requirement { Loads = ["display"], LoadsLabel = "essential", Endure = Duration.FromMinutes(90) }],
        Tolerances = [new Tolerance("display.current", new Uniform(4.5, 5.5)), new Tolerance("main_battery.health", new Uniform(0.6, 1))],
        BatteriesOnOffer =
        [
            new BatteryOnOffer("large", Charge.FromAmpereHours(12), Duration.FromHours(20), 5.2),
            new BatteryOnOffer("small", Charge.FromAmpereHours(7), Duration.FromHours(20), null),
            new BatteryOnOffer("middle", Charge.FromAmpereHours(8), Duration.FromHours(20), 3.9),
        ],
    };

    public static SizingAnswer Size(SizingFind find, string subject) =>
        SizingStudy.Answer(Scenario, new SizingQuestion { Find = find, Subject = subject }, new SimulationOptions());

    public static FailureStanding Failures(Scenario scenario) => new(
        scenario,
        SingleFailureStudy.Run(scenario, new SingleFailureOptions()),
        FailureCaseStudy.Run(scenario, [new FailureCase { Name = SingleFailureStudy.OnItsOwn }, .. scenario.FailureCases], new SimulationOptions()),
        []);

    public static SpreadResult Spread()
    {
        var options = new SpreadOptions { Samples = 100, Seed = 5 };
        return new SpreadResult
        {
            Scenario = Scenario,
            Options = options,
            Cases = SpreadStudy.Run(Scenario, options),
            AsWritten = FailureCaseStudy.Run(Scenario, Scenario.FailureCases, new SimulationOptions()),
            Sensitivity = SweepStudy.Sensitivity(Scenario, new SimulationOptions()),
        };
    }

    public static SweepResult Sweep()
    {
        var health = AdjustableQuantities.Find(Scenario, "main_battery.health")!;
        return new SweepResult(Scenario, health, SweepStudy.Run(Scenario, health, 1, 0.6, 3, new SimulationOptions()));
    }
}
