using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Reference;

/// <summary>Charging whose course over time has a closed form; the derivation stands beside each.</summary>
[Trait("Kind", "Validation")]
public sealed class ClosedFormCharging
{
    [Fact]
    public void Recharge_AtAConstantCurrent_RefillsByTheLowCurrentLaw()
    {
        // dz/dt = (I/C) (I_low/I_ref)^(k-1) efficiency; 10 A alternator limit less a load of 4 A leaves 6 A; H = 1 h so that I_low < I_ref.
        var battery = Battery("battery", "bus", 20, 1, 1.2, Table((0, 11), (100, 13)), PiecewiseLinear.Constant(5), 0.9) with { InitialCharge = 0.3 };
        var low = 20 * Math.Pow(1 / 20.0, 1 / 1.2);
        var perHour = 6 / 20.0 * Math.Pow(low / 20, 0.2) * 0.9;
        var scenario = Scenario(1) with
        {
            Buses = [Bus("bus")],
            Batteries = [battery],
            Alternators = [Alternator("alternator", "bus", 14.5, 5, 10)],
            Loads = [Amperes("load", "bus", 4)],
        };

        var run = scenario.Run();

        Assert.Equal(-6, run.Battery("battery").StartCurrent.Amperes, 1e-8);
        Assert.Equal(0.3 + perHour, run.Battery("battery").ChargeEnd, 1e-7);
        Assert.Equal(6, run.Battery("battery").Received.AmpereHours, 1e-6);
        Assert.Equal(0, run.Battery("battery").Delivered.AmpereHours);
    }

    /// <remarks>
    /// At its limit L the alternator charges with I = L - A beside a load of A, until the bus is at V - L d (V set-point, d droop). From
    /// there i = (V - d A - e)/(R + d), and as e = e0 + k z and dz/dt = i/C, the charge nears that of e = V - d A with tau = C (R + d)/k. The
    /// alternator fails at 100 minutes; z C/A later the battery is empty. Where in a step the limit lets go differs with the start.
    /// </remarks>
    [Fact]
    public void AlternatorLimit_LetGoInsideAStep_LeavesTheChargeExact()
    {
        const double e0 = 11.5, k = 1.4, ohms = 0.03, capacity = 20, setpoint = 12.85, droop = 0.01, limit = 14, load = 4, failsAt = 100;
        const double tau = capacity * 60 * (ohms + droop) / k, last = (setpoint - (droop * load) - e0) / k;
        const double letGo = (setpoint - (limit * droop) - ((limit - load) * ohms) - e0) / k;
        var errors = new List<double>();
        for (var charge = 0.3; charge < 0.64; charge += 0.02)
        {
            var begins = (letGo - charge) * capacity * 60 / (limit - load);
            var atFailure = last - ((last - letGo) * Math.Exp(-(failsAt - begins) / tau));
            var battery = Battery("battery", "bus", capacity, 20, 1, Table((0, e0), (100, e0 + k)), PiecewiseLinear.Constant(ohms * 1000));
            var scenario = Scenario(10) with
            {
                Buses = [Bus("bus")],
                Batteries = [battery with { InitialCharge = charge }],
                Alternators = [Alternator("alternator", "bus", setpoint, droop * 1000, limit)],
                Loads = [Amperes("load", "bus", load)],
            };

            var run = scenario.Run(Case(At(failsAt, (ActionVerb.Fail, "alternator"))));

            errors.Add(run.Battery("battery").TimeToExhaustion.Minutes() - (failsAt + (atFailure * capacity * 60 / load)));
        }

        Assert.All(errors, error => Assert.Equal(0, error, 2e-5));
    }

    [Fact]
    public void FullBattery_UnderAnAlternator_PassesCurrentButGainsNothing()
    {
        var scenario = Charged(acceptance: null, charge: 1);

        var run = scenario.Run();

        Assert.Equal(-(14.2 - 12.8) / 0.03, run.Battery("battery").StartCurrent.Amperes, 1e-6);
        Assert.Equal(1, run.Battery("battery").ChargeEnd);
    }

    [Fact]
    public void ChargeAcceptance_NearlyFullBattery_LimitsTheCurrentAndFillsExponentially()
    {
        // i = C (1 - z) per hour, k = 1: 1 - z falls as exp(-t/1 h).
        var run = Charged(acceptance: 1, charge: 0.9).Run();

        Assert.Equal(-20 * 0.1, run.Battery("battery").StartCurrent.Amperes, 1e-9);
        Assert.Equal(1 - (0.1 * Math.Exp(-1)), run.Battery("battery").ChargeEnd, 1e-7);
    }

    [Fact]
    public void ChargeAcceptance_FullBattery_TakesNothing()
    {
        var run = Charged(acceptance: 1, charge: 1).Run();

        Assert.Equal(0, run.Battery("battery").StartCurrent.Amperes, 1e-9);
        Assert.Equal(0, run.Battery("battery").Received.AmpereHours, 1e-9);
    }

    private static Scenario Charged(double? acceptance, double charge) => Scenario(1) with
    {
        Buses = [Bus("bus")],
        Batteries =
        [
            Battery("battery", "bus", 20, 20, 1, Table((0, 12.8), (100, 12.8)), PiecewiseLinear.Constant(20)) with
            {
                InitialCharge = charge,
                ChargeAcceptancePerHour = acceptance,
            },
        ],
        Alternators = [Alternator("alternator", "bus", 14.2, 10, 60)],
    };
}
