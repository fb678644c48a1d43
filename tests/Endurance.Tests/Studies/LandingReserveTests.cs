using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

public sealed class LandingReserveTests
{
    // 600 A min, 10 A in cruise, 30 A for the 6 min to the ground: 60 - 18 = 42 min. k 1, so the sum is exact.
    [Fact]
    public void Approach_ByASteadyDischarge_BeginsWhenItsOwnShareIsLeft()
    {
        var result = Aircraft(landingAmperes: 20).Judge();

        Assert.Equal(42, result.LatestApproach!.Value.Minutes, 0.006);
        Assert.True(result.LandingReserve!.IsEverCovered);
    }

    [Fact]
    public void Landing_OfTheCase_ComesBeforeTheScenarios()
    {
        var failureCase = Case() with { Landing = new Landing(["lights"], Duration.FromMinutes(12)) };

        Assert.Equal(24, Aircraft(landingAmperes: 20).Judge(failureCase).LatestApproach!.Value.Minutes, 0.006);
    }

    [Fact]
    public void Landing_MoreThanTheBatteryHolds_IsNeverCoveredAndSaysSo()
    {
        var result = Aircraft(landingAmperes: 200).Judge();

        Assert.Null(result.LatestApproach);
        Assert.False(result.LandingReserve!.IsEverCovered);
        Assert.Contains(result.Findings, finding => finding.Code is "landing-not-covered");
    }

    [Fact]
    public void Landing_BeyondTheHorizon_HasNoLatestMinute()
    {
        var result = (Aircraft(landingAmperes: 20) with { Horizon = Duration.FromMinutes(20) }).Judge();

        Assert.Null(result.LatestApproach);
        Assert.True(result.LandingReserve!.IsEverCovered);
        Assert.DoesNotContain(result.Findings, finding => finding.Code.StartsWith("landing", StringComparison.Ordinal));
    }

    [Fact]
    public void Landing_NotGiven_IsNotSearched() =>
        Assert.Null((Aircraft(landingAmperes: 20) with { Landing = null }).Judge().LandingReserve);

    // 18 A of lights for 20 min on top of 10 A: 600 - 560 = 10 t at 4 min. A step at 26 min takes the lights off, so that from
    // t = (18 x 26 - 400)/8 = 8.5 min on an approach is covered again.
    [Fact]
    public void Approach_CoveredAgainLater_GivesTheEarlierLimitWithACaution()
    {
        var scenario = Aircraft(landingAmperes: 18) with { Landing = new Landing(["lights"], Duration.FromMinutes(20)) };

        var result = scenario.Judge(Case(At(26, (ActionVerb.Shed, "lights"))));

        Assert.Equal(4, result.LatestApproach!.Value.Minutes, 0.006);
        Assert.Contains(result.Findings, finding => finding.Code is "landing-reserve-patchy");
    }

    [Fact]
    public void LandingLoad_OnADeadBus_IsSaidToBeUnpowered()
    {
        var scenario = Aircraft(landingAmperes: 20);
        scenario = scenario with { Buses = [.. scenario.Buses, Bus("dead")], Loads = [scenario.Loads[0], scenario.Loads[1] with { Bus = "dead" }] };

        Assert.Contains(scenario.Judge().Findings, finding => finding is { Code: "landing-load-unpowered", Part: "lights" });
    }

    private static Scenario Aircraft(double landingAmperes) => Scenario() with
    {
        Buses = [Bus("bus")],
        Batteries = [Battery("battery", "bus", 10, 1, 1, Table((0, 12), (100, 12)), PiecewiseLinear.Constant(1))],
        Loads = [Amperes("display", "bus", 10, 5), Amperes("lights", "bus", landingAmperes) with { IsEssential = false, IsOn = false }],
        Landing = new Landing(["lights"], Duration.FromMinutes(6)),
    };
}
