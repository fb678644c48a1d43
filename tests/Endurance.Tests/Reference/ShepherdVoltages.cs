using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reference;

/// <summary>A cell that follows Shepherd's formula, typed as an EMF table: NREL System Advisor Model library, test lib_battery_voltage_test at e97a19f8.</summary>
/// <remarks>V = E0 - K Q/(Q - it) + A exp(-B it) - R I, five strings of 2.25 Ah and 0.2 ohm; the program itself knows tables only.</remarks>
[Trait("Kind", "Validation")]
public sealed class ShepherdVoltages
{
    private const double Full = 4.1, Exponential = 4.05, Nominal = 3.4;
    private const double FullHours = 2.25, ExponentialHours = 0.04, NominalHours = 2.0, Rate = 0.2, Ohms = 0.2;
    private const int Strings = 5;

    /// <summary>From 50 % of 11.25 Ah; published V a cell after the time.</summary>
    [Theory]
    [InlineData(0, 1, 4.059, 1e-3)]
    [InlineData(2, 60, 3.889, 1e-3)]
    [InlineData(2, 30, 3.94, 0.01)]
    [InlineData(5, 60, 2.559, 1e-3)]
    public void Table_FromTheFormula_ReturnsThePublishedVolts(double amperes, double minutes, double volts, double tolerance)
    {
        var battery = Battery("cell", "bus", FullHours * Strings, 20, 1, Emf(), PiecewiseLinear.Constant(Ohms / Strings * 1000)) with { InitialCharge = 0.5 };
        var scenario = Scenario() with
        {
            Horizon = Duration.FromMinutes(minutes),
            Buses = [Bus("bus")],
            Batteries = [battery],
            Loads = amperes > 0 ? [Amperes("load", "bus", amperes, 0.1)] : [],
        };

        var trace = scenario.Run(null, new SimulationOptions { SampleInterval = Duration.FromMinutes(minutes) }).Trace!;

        Assert.Equal(volts, trace.BusVolts[0].Values[^1], tolerance);
    }

    private static PiecewiseLinear Emf()
    {
        const double lowest = 0.01;
        const int rows = 400;
        double[] charges = [0, .. Enumerable.Range(0, rows + 1).Select(i => lowest + ((1 - lowest) * i / rows))];
        return new PiecewiseLinear([.. charges], [.. charges.Select(charge => Volts(FullHours * (1 - Math.Max(charge, lowest))))]);
    }

    /// <summary>Without load after a string has given so many ampere-hours.</summary>
    private static double Volts(double given)
    {
        var a = Full - Exponential;
        var b = 3 / ExponentialHours;
        var k = (Full - Nominal + (a * (Math.Exp(-b * NominalHours) - 1))) * (FullHours - NominalHours) / NominalHours;
        var constant = Full + k + (Ohms * Rate * FullHours) - a;
        return constant - (k * FullHours / (FullHours - given)) + (a * Math.Exp(-b * given));
    }
}
