using Endurance.Components;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;
using Endurance.Tests.Simulation.Events;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

public sealed class JudgementTests
{
    private const double Minutes = 1e-5;

    /// <summary>Two essential loads, lost at 10 min and (after the first has gone) 12.8 min, and one that is not essential, lost at 8 min.</summary>
    private static Scenario Aircraft(params Requirement[] requirements) => Ramp.Falling(
        Amperes("first", "bus", 5, 12.4), Amperes("second", "bus", 5, 12.38), Ohms("heater", "bus", 1e6, 12.5) with { IsEssential = false }) with
    {
        Requirements = [.. requirements],
    };

    private static Requirement Loads(double minutes, params string[] loads) => new() { Loads = [.. loads], Endure = Duration.FromMinutes(minutes) };

    [Fact]
    public void NoRequirement_EssentialLoads_GiveTheEnduranceWithoutAVerdict()
    {
        var result = Aircraft().Judge();

        Assert.Equal(Verdict.None, result.Verdict);
        Assert.Equal(10, result.Endurance.Minutes(), Minutes);
        Assert.Equal("first", result.LimitedBy);
        Assert.Empty(result.Requirements);
    }

    [Fact]
    public void NoRequirement_BusWithCutoff_CountsToo()
    {
        var result = (Aircraft() with { Buses = [Bus("bus", 12.6)] }).Judge();

        Assert.Equal(6, result.Endurance.Minutes(), 1e-4);
        Assert.Equal("bus", result.LimitedBy);
    }

    [Theory]
    [InlineData(9.9, Verdict.Pass)]
    [InlineData(10.1, Verdict.Fail)]
    public void Requirement_EarliestOfItsLoads_Decides(double endure, Verdict verdict)
    {
        var result = Aircraft(Loads(endure, "second", "first")).Judge();

        Assert.Equal(verdict, result.Verdict);
        Assert.Equal("first", Assert.Single(result.Requirements).LimitedBy);
        Assert.Equal(10, result.Requirements[0].Endurance.Minutes(), Minutes);
    }

    [Fact]
    public void TwoRequirements_OneFails_TheCaseFailsAndItsEnduranceIsTheEarliest()
    {
        var result = Aircraft(Loads(5, "first"), Loads(20, "second")).Judge();

        Assert.Equal([Verdict.Pass, Verdict.Fail], result.Requirements.Select(item => item.Verdict));
        Assert.Equal(Verdict.Fail, result.Verdict);
        Assert.Equal(10, result.Endurance.Minutes(), Minutes);
    }

    [Fact]
    public void Requirement_OfAnotherCase_DoesNotApply()
    {
        var scenario = Aircraft(Loads(60, "first") with { Case = "another" });

        Assert.Equal(Verdict.None, scenario.Judge().Verdict);
        Assert.Equal(Verdict.Fail, scenario.Judge(Case() with { Name = "another" }).Verdict);
    }

    [Fact]
    public void Requirement_OnABus_IsJudgedAtItsCutoff()
    {
        var scenario = Aircraft(new Requirement { Bus = "bus", Endure = Duration.FromMinutes(7) }) with { Buses = [Bus("bus", 12.6)] };

        var result = scenario.Judge();

        Assert.Equal(Verdict.Fail, result.Verdict);
        Assert.Equal("bus", result.LimitedBy);
        Assert.Equal(6, result.Endurance.Minutes(), 1e-4);
    }

    [Fact]
    public void Requirement_NotLostWithinTheHorizon_PassesWithoutANumber()
    {
        var result = (Aircraft(Loads(5, "first")).For(9)).Judge();

        Assert.Equal(Verdict.Pass, result.Verdict);
        Assert.Null(result.Endurance);
        Assert.Null(result.LimitedBy);
    }

    [Theory]
    [InlineData(false, Verdict.Fail, 5)]
    [InlineData(true, Verdict.Pass, double.PositiveInfinity)]
    public void Dip_AllowedOrNot_JudgesTheLastOrTheFirstLoss(bool allowed, Verdict verdict, double minutes)
    {
        var scenario = Ramp.Standing(12, Amperes("display", "bus", 2, 12.2).Restarting(13)) with
        {
            Alternators = [Alternator("alternator", "bus", 14, 1, 400)],
            Requirements = [Loads(30, "display") with { DipsAllowed = allowed }],
        };

        var result = scenario.Judge(Case(At(5, (ActionVerb.Fail, "alternator")), At(8, (ActionVerb.Restore, "alternator"))));

        Assert.Equal(verdict, result.Verdict);
        Assert.Equal(minutes, result.Endurance.Minutes(), Minutes);
    }

    [Fact]
    public void Shed_OneOfTwoLoads_LeavesTheRequirementWithACaution()
    {
        var result = Aircraft(Loads(11, "first", "second")).Judge(Case(At(3, (ActionVerb.Shed, "first"))));

        Assert.Equal(Verdict.Pass, result.Verdict);
        Assert.Equal("second", result.LimitedBy);
        var finding = Assert.Single(result.Findings, item => item.Code == "required-load-shed");
        Assert.Equal(("first", Severity.Caution), (finding.Part, finding.Severity));
    }

    [Fact]
    public void Shed_EveryLoadBeforeItsTime_FailsAsShed()
    {
        var result = Aircraft(Loads(9, "first", "second")).Judge(Case(At(3, (ActionVerb.Shed, "first")), At(5, (ActionVerb.Shed, "second"))));

        Assert.Equal(Verdict.Fail, result.Verdict);
        Assert.Equal("shed", result.LimitedBy);
        Assert.Equal(5, result.Endurance.Minutes(), Minutes);
    }

    [Fact]
    public void Shed_AfterItsTime_Passes()
    {
        var result = Aircraft(Loads(4, "first")).Judge(Case(At(5, (ActionVerb.Shed, "first"))));

        Assert.Equal(Verdict.Pass, result.Verdict);
        Assert.DoesNotContain(result.Findings, item => item.Code == "required-load-shed");
    }

    [Fact]
    public void Requirement_OnALoadNeverConnected_FailsAsShed()
    {
        var scenario = Aircraft(Loads(4, "heater"));
        scenario = scenario with { Loads = [.. scenario.Loads.Select(load => load.Name == "heater" ? load.Off() : load)] };

        var result = scenario.Judge();

        Assert.Equal(Verdict.Fail, result.Verdict);
        Assert.Equal("shed", result.LimitedBy);
    }

    [Theory]
    [InlineData(4, 6)]
    [InlineData(9.5, 0.5)]
    public void AfterRecognition_IsEnduranceLessTheFirstAction(double recognised, double left)
    {
        var scenario = Aircraft() with { Loads = [.. Aircraft().Loads, Ohms("spare", "bus", 1e6) with { IsEssential = false }] };

        var result = scenario.Judge(Case(At(recognised, (ActionVerb.Shed, "spare"))));

        Assert.Equal(left, result.AfterRecognition.Minutes(), 1e-3);
    }

    [Fact]
    public void AfterRecognition_ActionAfterTheLoss_IsZeroAndWithoutActionAbsent()
    {
        Assert.Equal(0, Aircraft().Judge(Case(At(20, (ActionVerb.Shed, "heater")))).AfterRecognition.Minutes());
        Assert.Null(Aircraft().Judge().AfterRecognition);
    }
}
