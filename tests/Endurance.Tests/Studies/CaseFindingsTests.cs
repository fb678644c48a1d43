using Endurance.Components;
using Endurance.Findings;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using Endurance.Tests.Reference;
using Endurance.Tests.Simulation.Events;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

public sealed class CaseFindingsTests
{
    [Theory]
    [InlineData(0.1, true)]
    [InlineData(1, false)]
    public void Duty_ThatHidesAPeak_IsACaution(double duty, bool found)
    {
        // 60 A at full draw through 10 mohm leave 11.9 V of 12.5 V; a tenth leaves 12.44 V.
        var scenario = Ramp.Standing(12.5, Amperes("transmitter", "bus", 60) with { Duty = duty }, Amperes("radio", "bus", 1, 12));

        var result = scenario.Judge();

        if (!found)
        {
            Assert.DoesNotContain(result.Findings, item => item.Code == "stops-at-full-duty");
            return;
        }

        var finding = Assert.Single(result.Findings, item => item.Code == "stops-at-full-duty");
        Assert.Equal(("radio", Severity.Caution), (finding.Part, finding.Severity));
        Assert.Null(result.Run.Load("radio").LostBecause);
    }

    [Fact]
    public void Duty_ThatHidesEndlessSwitching_IsACautionAndNoFailure()
    {
        // 60 A at full draw leave 11.9 V, so that it stops; without it the bus is above its restart voltage at once.
        var scenario = Ramp.Standing(12.5, Amperes("transmitter", "bus", 60, 12).Restarting(12.2) with { Duty = 0.1 });

        var finding = Assert.Single(scenario.Judge().Findings, item => item.Code == "stops-at-full-duty");

        Assert.Equal("transmitter", finding.Part);
        Assert.Contains("without end", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(30, true)]
    [InlineData(0, false)]
    public void Recharge_DuringACase_IsSaid(double minutesOfAlternator, bool found)
    {
        var scenario = Ramp.Falling(Amperes("load", "bus", 1)) with { Alternators = [Alternator("alternator", "bus", 14, 10, 10)] };
        scenario = scenario with { Batteries = [scenario.Batteries[0] with { InitialCharge = 0.5 }] };

        var result = scenario.Judge(Case(At(minutesOfAlternator, (ActionVerb.Fail, "alternator"))));

        Assert.Equal(found, result.Findings.Any(item => item.Code == "battery-recharged" && item.Part == "battery"));
    }

    [Theory]
    [InlineData(12, true)]
    [InlineData(2, false)]
    public void Junction_BeyondItsLimit_IsAWarningThatNamesTheFeed(double kelvinPerWatt, bool found)
    {
        var diode = Schottky(20, 1.05, 6) with { HeatPath = kelvinPerWatt, MaximumJunction = Temperature.FromCelsius(70) };
        var scenario = Ramp.Standing(12, Amperes("load", "far", 15, 5)) with
        {
            Buses = [Bus("bus"), Bus("far")],
            Feeds = [Feed("steering", "bus", "far", 2, diode)],
        };

        var result = scenario.Judge();

        Assert.Equal(found, result.Findings.Any(item => item.Code == "junction-too-hot" && item.Part == "steering" && item.Severity == Severity.Warning));
    }

    [Fact]
    public void Cases_InAnyCompany_AnswerTheSameToTheLastBit()
    {
        var scenario = ReferenceNetworks.MainAndEssential;
        FailureCase[] cases = [.. Enumerable.Range(0, 12).Select(i => Case(At(i, (ActionVerb.Fail, "alternator")), At(i + 3, (ActionVerb.Shed, "main_ohms"))) with { Name = $"case{i}" })];

        var together = FailureCaseStudy.Run(scenario, [.. cases], new SimulationOptions());

        for (var i = 0; i < cases.Length; i++)
        {
            var alone = FailureCaseStudy.Run(scenario, [cases[i]], new SimulationOptions())[0];
            Assert.Equal(cases[i].Name, together[i].Name);
            Assert.Equal(Text(alone.Run), Text(together[i].Run));
        }
    }

    [Fact]
    public void Run_Cancelled_Stops()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();

        Assert.ThrowsAny<OperationCanceledException>(() =>
            FailureCaseStudy.Run(Ramp.Falling(Amperes("load", "bus", 1)), [Case()], new SimulationOptions(), source.Token));
    }

    [Fact]
    public void Run_Chattering_IsNamedThroughTheStudy()
    {
        var scenario = Ramp.Standing(12.9, Amperes("display", "bus", 100, 12).Restarting(12.5));

        Assert.Equal(["display"], scenario.Judge().BreakOff!.Parts.AsEnumerable());
    }

    /// <summary>15 V over 13 V and 100 mohm are 20 A for ever: 20 Ah in an hour into 10 Ah that are full.</summary>
    [Theory]
    [InlineData(null, true)]
    [InlineData(1.0, false)]
    public void Battery_FullThatTakesOn_IsSaidToHaveNoLimit(double? acceptance, bool isSaid)
    {
        var scenario = Scenario(1) with
        {
            Buses = [Bus("bus")],
            Batteries = [Battery("battery", "bus", 10, 20, 1, PiecewiseLinear.Constant(13), PiecewiseLinear.Constant(100)) with { ChargeAcceptancePerHour = acceptance }],
            Alternators = [Alternator("alternator", "bus", 15, 1e-3, 40)],
        };

        var found = scenario.Judge().Findings.Where(finding => finding.Code == "charge-not-limited").ToArray();

        Assert.Equal(isSaid ? 1 : 0, found.Length);
        if (isSaid)
        {
            Assert.Equal(
                new Finding("charge-not-limited", Severity.Caution, "battery", "20.0 A",
                    "battery is charged with up to 20.0 A and takes 20.0 Ah, though it lacks 0.0 Ah at most: nothing limits what it accepts, full or not. "
                    + "Bus volts while it charges come out too low and the alternator's load too high. Give charge_acceptance: 1 /h, or a chemistry."),
                found[0]);
        }
    }

    private static string Text(SimulationResult run) => string.Join('\n', [
        .. run.Loads.Select(item => item.ToString()), .. run.Buses.Select(item => item.ToString()), .. run.Batteries.Select(item => FormattableString.Invariant($"{item.ChargeEnd:R} {item.Delivered.Coulombs:R}")),
        .. run.Events.Select(item => FormattableString.Invariant($"{item.Time.Seconds:R} {item.What}"))]);
}
