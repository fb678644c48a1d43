using Endurance.Components;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Tests.Simulation.Events;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

public sealed class WarningFindingsTests
{
    [Theory]
    [InlineData(10.5, "light never comes on, but radio is lost at 38 min. 10.5 V on bus is too low or the wrong bus; a threshold just below the lowest alternator voltage tells at once.")]
    [InlineData(10.9, "light comes on at 40 min, but radio is lost at 38 min. 10.9 V on bus is too low or the wrong bus; a threshold just below the lowest alternator voltage tells at once.")]
    public void Warning_AfterTheFirstEssentialLoss_IsBlind(double below, string message)
    {
        // 12.9 V less 0.05 V a minute: 11 V at 38 min, 10.9 V at 40 min; the run ends at 45 min.
        var scenario = Ramp.Falling(Amperes("radio", "bus", 1e-3, 11), Amperes("rest", "bus", 9.999)).For(45) with { Warnings = [Light(below)] };

        FindingAssert.Is(scenario.Judge(), new Finding("warning-blind", Severity.Warning, "light", FormattableString.Invariant($"{below} V"), message));
    }

    [Theory]
    [InlineData(11.2, "57 %", "light comes on at 34 min, with 57 % of the batteries' energy gone. Raise its 11.2 V: a threshold just below the lowest alternator voltage tells at once.")]
    [InlineData(9, "75 %", "light is still dark at 45 min, with 75 % of the batteries' energy gone. Raise its 9 V: a threshold just below the lowest alternator voltage tells at once.")]
    [InlineData(12.5, null, null)]
    public void Warning_AfterHalfTheEnergy_IsLate(double below, string? share, string? message)
    {
        var scenario = Ramp.Falling(Amperes("rest", "bus", 10) with { IsEssential = false }).For(45) with { Warnings = [Light(below)] };

        var result = scenario.Judge();

        if (share is null)
            FindingAssert.None(result, "warning-late");
        else
            FindingAssert.Is(result, new Finding("warning-late", Severity.Warning, "light", share, message!));
    }

    [Theory]
    [InlineData("essential", true)]
    [InlineData("main", false)]
    public void Warning_BehindADiodeFromTheAlternator_IsMasked(string senses, bool found)
    {
        var scenario = Scenario(0.2) with
        {
            Buses = [Bus("main"), Bus("essential"), Bus("backup")],
            Batteries = [Ramp.Steady(12.5, "backup_battery", "backup")],
            Alternators = [Alternator("alternator", "main", 14, 5, 40)],
            Feeds = [Feed("normal", "main", "essential", 5, Schottky(20, 1.05, 6)), Feed("spare", "backup", "essential", 5, Schottky(20, 1.05, 6))],
            Loads = [Amperes("radio", "essential", 2, 5)],
            Warnings = [Light(13) with { Senses = senses }],
        };

        var result = scenario.Judge(Case(At(1, (ActionVerb.Fail, "alternator"))));

        FindingAssert.Is(result, new Finding("warning-behind-diode", Severity.Warning, "light", "essential",
            "light senses essential, which a diode parts from main and another source holds up: it does not see that alternator is gone. Let it sense main."), found);
    }

    [Theory]
    [InlineData(0, 0, true)]
    [InlineData(0, 2, false)]
    [InlineData(5, 5, true)]
    public void Pilot_ActingAtTheFailureItself_HasNoTimeToNotice(double failure, double action, bool found)
    {
        var scenario = Ramp.Standing(12.5, Amperes("lamp", "bus", 1, 5), Amperes("fan", "bus", 1, 5)) with { Alternators = [Alternator("alternator", "bus", 14, 5, 40)] };

        var result = scenario.Judge(Case(At(failure, (ActionVerb.Fail, "alternator")), At(action, (ActionVerb.Shed, "lamp"), (ActionVerb.Shed, "fan"))));

        FindingAssert.Is(result, new Finding("no-recognition-delay", Severity.Warning, "case", $"{failure} min",
            $"The pilot acts on lamp and fan at {failure} min, the instant of the failure itself. Nobody notices and decides in no time: give the step a later time, or let it wait for a warning."), found);
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(30, false)]
    public void Step_ThatWaitsForABus_WantsAMomentToBeSeen(double seconds, bool found)
    {
        var result = Ramp.Standing(12.5, Amperes("lamp", "bus", 1, 5)).Judge(Case(When("bus", 13, seconds, (ActionVerb.Shed, "lamp"))));

        FindingAssert.Is(result, new Finding("no-recognition-delay", Severity.Caution, "case", "0 s",
            "lamp answer to bus with no delay at all. A relay may do that; a pilot needs time to notice and decide. Give `for` or `recognised_after`."), found);
    }

    private static LowVoltageWarning Light(double below) => new() { Name = "light", Senses = "bus", Below = Voltage.FromVolts(below) };
}
