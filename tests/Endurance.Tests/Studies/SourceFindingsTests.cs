using Endurance.Components;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Tests.Simulation.Events;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

public sealed class SourceFindingsTests
{
    [Theory]
    [InlineData("", true)]
    [InlineData(", health: 80 %", false)]
    [InlineData(", charge: 90 %", false)]
    [InlineData(", capacity_factor: 85 %", false)]
    [InlineData(", health: 100 %", false)] // somebody has thought of it
    public void Battery_OfWhichNothingIsSaid_CountsAsNew(string said, bool found)
    {
        var result = Scenarios.Read("""
            endurance: 1
            system: 14 V
            batteries:
              ship: {bus: bus, capacity: 18 Ah, rate: 20 h, peukert: 1.15, resistance: 9 mohm, emf: [[0 %, 11 V], [100 %, 12.8 V]]SAID}
            buses: {bus: {}}
            failure_cases: {discharge: {timeline: []}}
            """.Replace("SAID", said, StringComparison.Ordinal)).JudgeFirst();

        FindingAssert.Is(result, new Finding("battery-assumed-new", Severity.Warning, "ship", "18 Ah",
            "ship counts with its whole 18 Ah: new, full and unhurt by cold, because the scenario says nothing of its health and charge. Give `health` from a capacity test, `charge`, and what cold takes."), found);
    }

    [Theory]
    [InlineData(null, true, true)]
    [InlineData(null, false, false)]
    [InlineData("diode", true, false)]
    public void Batteries_InParallel_WantSomethingBetween(string? diode, bool closed, bool found)
    {
        var tie = Feed("tie", "one", "two", 2, diode is null ? null : Schottky(20, 1.05, 6)) with { Switch = new Switch { IsClosed = closed } };
        var result = (Scenario(1) with { Buses = [Bus("one"), Bus("two")], Batteries = [Ramp.Steady(12.5, "first", "one"), Ramp.Steady(12.4, "second", "two")], Feeds = [tie] }).Judge();

        FindingAssert.Is(result, new Finding("batteries-joined", Severity.Warning, "second", "first",
            "second and first are in parallel with nothing between them: a shorted cell or a deep discharge of one takes the other with it, and the answer counts on both. Put a diode or an open contactor between them."), found);
    }

    [Theory]
    [InlineData(true, true)]
    [InlineData(false, false)]
    public void Batteries_BehindAFuse_AreJoinedWhileItIsIntact(bool isIntact, bool found)
    {
        var fuse = new Protection { Kind = ProtectionKind.Fuse, Rating = Current.FromAmperes(30), IsClosed = isIntact };
        var tie = Feed("tie", "one", "two", 2) with { Fuse = fuse };
        var result = (Scenario(1) with { Buses = [Bus("one"), Bus("two")], Batteries = [Ramp.Steady(12.5, "first", "one"), Ramp.Steady(12.4, "second", "two")], Feeds = [tie] }).Judge();

        Assert.Equal(found, result.Findings.Any(finding => finding.Code == "batteries-joined"));
    }

    [Theory]
    [InlineData("master", true)]
    [InlineData("battery", true)]
    [InlineData("spare", false)]
    public void Alternator_LeftWithoutItsBattery_IsNoAnswer(string lost, bool found)
    {
        var scenario = Scenario(1) with
        {
            Buses = [Bus("battery_bus"), Bus("main"), Bus("spare_bus")],
            Batteries = [Ramp.Steady(12.5, "battery", "battery_bus"), Ramp.Steady(12.5, "spare", "spare_bus")],
            Alternators = [Alternator("alternator", "main", 14, 5, 40)],
            Feeds = [Feed("master", "battery_bus", "main", 2), Feed("out", "main", "spare_bus", 2, Schottky(20, 1.05, 6))],
            Loads = [Amperes("radio", "main", 2, 10)],
        };

        var result = scenario.Judge(Case(At(10.5, (lost == "master" ? ActionVerb.Break : ActionVerb.Fail, lost))));

        FindingAssert.Is(result, new Finding("alternator-alone", Severity.Warning, "alternator", "10.5 min",
            "From 10.5 min on alternator carries its bus with no battery to steady it. Many alternators and regulators lose their voltage or overshoot then; do not count on these minutes. Keep a battery on the bus, or switch the alternator off."), found);
    }

    [Theory]
    [InlineData("main", true)]
    [InlineData("battery_bus", false)]
    public void Alternator_WhoseFieldBusLosesItsBattery_GivesNothing(string fieldBus, bool found)
    {
        var field = new AlternatorField { Bus = fieldBus, Current = Current.FromAmperes(2) };
        var scenario = Scenario(1) with
        {
            Buses = [Bus("battery_bus"), Bus("main")],
            Batteries = [Ramp.Steady(12.5, "battery", "battery_bus")],
            Alternators = [Alternator("alternator", "main", 14, 5, 40) with { Field = field }],
            Feeds = [Feed("master", "battery_bus", "main", 2)],
            Loads = [Amperes("radio", "main", 2, 10)],
        };

        var result = scenario.Judge(Case(At(10.5, (ActionVerb.Break, "master"))));

        Assert.Equal(found ? "10.5 min" : null, result.Findings.FirstOrDefault(finding => finding.Code == "alternator-without-field")?.Value);
        Assert.Equal(found, result.Run.Loads[0].TimePowered is not null);
    }

    [Theory]
    [InlineData(5, false, "Caution", "converter gives its limit of 3 A: avionics wants more, and its voltage falls. Use a larger one, or shed loads on avionics.")]
    [InlineData(5, true, "Information", "converter gives its limit of 3 A while it refills avionics.")]
    [InlineData(2, false, null, null)]
    public void Charger_AtItsLimit_IsSaid(double amperes, bool fills, string? severity, string? message)
    {
        var scenario = Scenario(0.1) with
        {
            Buses = [Bus("main"), Bus("avionics")],
            Batteries = fills ? [Ramp.Steady(12.5, bus: "main"), Ramp.Steady(11, "backup", "avionics")] : [Ramp.Steady(12.5, bus: "main")],
            Chargers = [new Charger { Name = "converter", From = "main", To = "avionics", Output = Voltage.FromVolts(13), Limit = Current.FromAmperes(3), Efficiency = 0.9, Droop = Resistance.FromMilliohms(10) }],
            Loads = [Ohms("radio", "avionics", 13 / amperes, 5)],
        };

        var result = scenario.Judge();

        if (severity is null)
            FindingAssert.None(result, "charger-at-limit");
        else
            FindingAssert.Is(result, new Finding("charger-at-limit", Enum.Parse<Severity>(severity), "converter", "3 A", message!));
    }

    [Theory]
    [InlineData(55, true, "+6.5 %", "clear pass")]
    [InlineData(60, true, "-2.3 %", "clear fail")]
    [InlineData(50, false, "", "")]
    public void Margin_WithinATenth_IsNoClearAnswer(double minutes, bool found, string value, string word)
    {
        // 12.9 V less 0.05 V a minute under 10 A falls below 9.97 V at 58.6 min.
        var scenario = Ramp.Falling(Amperes("radio", "bus", 10, 9.97)) with
        {
            Requirements = [new Requirement { Loads = ["radio"], Endure = Duration.FromMinutes(minutes) }],
        };

        var result = scenario.Judge();

        FindingAssert.Is(result, new Finding("thin-margin", Severity.Caution, "radio", value,
            FormattableString.Invariant($"radio lasts 58.6 min against {minutes} min required, within 10 %. Age, cold and the spread of real batteries are wider than that: do not take it for a {word}.")), found);
    }
}
