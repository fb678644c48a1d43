using Endurance.Components;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.GroundTest;
using Endurance.Tests.Yaml;
using Endurance.Yaml;

namespace Endurance.Tests.Studies;

/// <summary>The card of a shipped scenario, filled in from the same aircraft with one thing wrong, has to name that thing and no other.</summary>
public sealed class ReconciliationCauseTests
{
    private static readonly string[] Files = ["floatplane.yaml", "twin_feeds.yaml", "layouts.yaml", "ignition.yaml", "cruiser28v.yaml"];

    public static TheoryData<string, string> Diodes => Each(scenario => scenario.Feeds.Where(feed => feed.Diode is not null).Select(feed => feed.Name));

    public static TheoryData<string, string> Feeds => Each(scenario => scenario.Feeds.Select(feed => feed.Name));

    public static TheoryData<string, string> Batteries => Each(scenario => scenario.Batteries.Select(battery => battery.Name));

    public static TheoryData<string, string> Loads => Each(scenario => scenario.Loads.Select(load => load.Name));

    public static TheoryData<string, string> Contacts => Each(scenario => scenario.Feeds.Where(feed => feed.Switch is not null || feed.Contactor is not null).Select(feed => feed.Name));

    [Theory]
    [MemberData(nameof(Batteries))]
    public void Battery_NotConnected_IsNamed(string file, string battery) => AssertNamed("battery-missing", battery, file, Step(ActionVerb.Fail, battery));

    /// <summary>The charge at which its rest voltage has fallen by 0.6 V, twice that at 28 V: three times what is within tolerance.</summary>
    [Theory]
    [MemberData(nameof(Batteries))]
    public void Battery_LessCharged_IsNamedWithItsCharge(string file, string battery)
    {
        var drawn = ShippedScenarioTests.Read(file);
        var typed = drawn.Batteries.Single(candidate => candidate.Name == battery);
        var charge = Enumerable.Range(0, 1000).Select(i => typed.InitialCharge - (i * 0.001)).First(left => typed.Emf.At(typed.InitialCharge) - typed.Emf.At(left) > 0.6 * drawn.BatteriesInSeries);

        var finding = AssertNamed("battery-charge-differs", battery, file, Aircraft(aircraft => WithBattery(aircraft, battery, fitted => fitted with { InitialCharge = charge })));

        Assert.Equal(charge * 100, double.Parse(finding.Value.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), 1.5);
    }

    /// <summary>Six cells for 12 V, as of lead; one is less than what a low charge takes away.</summary>
    [Theory]
    [MemberData(nameof(Batteries))]
    public void Battery_WithAShortedCell_IsNamed(string file, string battery)
    {
        var drawn = ShippedScenarioTests.Read(file);
        var card = new MeasuredCard(WithBattery(drawn, battery, fitted => fitted with { Cells = 6 * drawn.BatteriesInSeries }));

        var finding = Assert.Single(card.Reconciled(card.Of(Step(ActionVerb.ShortCell, battery))).Findings);

        Assert.Equal(("cell-shorted", battery), (finding.Code, finding.Part));
    }

    /// <summary>Neither alone makes the volts with both right, so they are tried together.</summary>
    [Fact]
    public void Batteries_BothLessCharged_AreBothNamed()
    {
        var card = new MeasuredCard(ShippedScenarioTests.Read("floatplane.yaml"));

        var finding = Assert.Single(card.Reconciled(card.Of(Aircraft(aircraft => aircraft with { Batteries = [.. aircraft.Batteries.Select(battery => battery with { InitialCharge = 0.4 })] }))).Findings);

        Assert.Equal(("battery-charge-differs", "40 %, 40 %"), (finding.Code, finding.Value));
        Assert.Contains("ship_battery is charged to about 40 % and not to 95 %, and backup_battery is charged to about 40 % and not to 100 %.", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Diodes))]
    public void Diode_Backwards_IsNamed(string file, string feed) => AssertNamed(
        "diode-reversed", feed, file,
        Aircraft(aircraft => With(aircraft, feed, fitted => fitted with
        {
            From = fitted.To,
            To = fitted.From,
            Contactor = fitted.Contactor is { } contactor ? contactor with { CoilBus = contactor.CoilBus ?? fitted.From } : null,
        })),
        (reading, value) => reading.Kind == ReadingKind.FeedAmperes && reading.Part == feed ? -value : value);

    [Theory]
    [MemberData(nameof(Diodes))]
    public void Diode_Bridged_IsNamed(string file, string feed) =>
        AssertNamed("diode-shorted", feed, file, Aircraft(aircraft => With(aircraft, feed, fitted => fitted with { Diode = null })));

    [Theory]
    [MemberData(nameof(Feeds))]
    public void Feed_Interrupted_IsNamed(string file, string feed) => AssertNamed("feed-open", feed, file, Step(ActionVerb.Break, feed));

    /// <summary>Of the size that takes 0.8 V, twice that at 28 V, where the feed is proven to carry.</summary>
    [Theory]
    [MemberData(nameof(Feeds))]
    public void Feed_WithABadJoint_IsNamed(string file, string feed)
    {
        var card = new MeasuredCard(ShippedScenarioTests.Read(file));
        var carried = card.Plan.Points.Single(point => point.Group == TestGroup.Conducts && point.Parts[0] == feed).Readings.Single(reading => reading.Kind == ReadingKind.FeedAmperes);
        var ohms = (card.Scenario.System == SystemVoltage.Volts28 ? 1.6 : 0.8) / carried.Predicted;

        var finding = AssertNamed("joint-resistance", feed, file, Aircraft(aircraft => With(aircraft, feed, fitted => fitted with
        {
            Resistor = new SeriesResistor((fitted.Resistor?.Resistance ?? default) + Resistance.FromOhms(ohms), null),
        })));

        Assert.Equal(ohms * 1e3, double.Parse(finding.Value.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), ohms * 1e3 * 0.05);
    }

    [Theory]
    [MemberData(nameof(Contacts))]
    public void Contact_ThatStaysClosed_IsNamed(string file, string feed) => AssertNamed("contact-stuck", feed, file, Aircraft(aircraft => With(aircraft, feed, fitted => fitted switch
    {
        { Switch: { } made } => fitted with { Switch = made with { IsClosed = true } },
        { Contactor: { IsClosed: false } } => fitted with { Contactor = null },
        _ => fitted,
    })));

    [Theory]
    [MemberData(nameof(Loads))]
    public void Load_DrawingMore_IsNamed(string file, string load)
    {
        var finding = AssertNamed("load-draws-otherwise", load, file, Drawing(load, 1.6));

        Assert.StartsWith("+", finding.Value, StringComparison.Ordinal);
    }

    /// <summary>The rest of the card has them draw less as well, so they are taken over, whatever else is out of tolerance with two of them.</summary>
    [Theory]
    [MemberData(nameof(Loads))]
    public void Loads_DrawingLess_AreTakenOver(string file, string load)
    {
        var card = new MeasuredCard(ShippedScenarioTests.Read(file));
        var other = card.Scenario.Loads.First(candidate => candidate.Name != load).Name;

        var result = card.Reconciled(card.Of(setup => Drawing(load, 0.6)(Drawing(other, 0.6)(setup))));

        Assert.DoesNotContain(result.Findings, finding => finding.Code == "load-not-taken-over");
        Assert.Contains(result.Loads, measured => measured.Drawn.Name == load && measured.Amperes < 0.9 * measured.Predicted);
    }

    [Theory]
    [MemberData(nameof(Loads))]
    public void Load_Dead_IsNamed(string file, string load) =>
        AssertNamed("load-draws-nothing", load, file, Aircraft(aircraft => WithLoad(aircraft, load, fitted => fitted with { IsOn = false })));

    [Theory]
    [InlineData("floatplane.yaml", "transponder", "essential_bus")]
    [InlineData("floatplane.yaml", "pitot_heat", "essential_bus")]
    [InlineData("floatplane.yaml", "landing_light", "battery_bus")]
    [InlineData("twin_feeds.yaml", "com_transmit", "main_bus")]
    [InlineData("twin_feeds.yaml", "primary_display", "main_bus")]
    public void Load_OnAnotherBus_IsNamed(string file, string load, string bus)
    {
        var finding = AssertNamed("load-on-wrong-bus", load, file, Aircraft(aircraft => WithLoad(aircraft, load, fitted => fitted with { Bus = bus })));

        Assert.Equal(bus, finding.Value);
    }

    /// <summary>The other one draws within 0.03 A of it.</summary>
    [Fact]
    public void Loads_ThatDrawAlike_AreBothNamed()
    {
        var card = new MeasuredCard(ShippedScenarioTests.Read("floatplane.yaml"));

        var result = card.Reconciled(card.Of(Aircraft(aircraft => WithLoad(aircraft, "com_receive", fitted => fitted with { Bus = "main_bus" }))));

        var finding = Assert.Single(result.Findings);
        Assert.Equal(("load-on-wrong-bus", "com_receive"), (finding.Code, finding.Part));
        Assert.Contains(" The same readings also fit this: engine_monitor hangs on main_bus. ", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1.2)]
    [InlineData(0.8)]
    public void Meter_OffByAFactor_IsNamed(double factor)
    {
        var finding = AssertNamed("ammeter-off", "ammeter", "floatplane.yaml", setup => setup, (reading, value) => reading.Kind == ReadingKind.BusVolts ? value : value * factor);

        Assert.Equal(factor > 1 ? "+20 %" : "-20 %", finding.Value);
    }

    /// <summary>Draws that it shows too low would make the minutes too long.</summary>
    [Fact]
    public void Meter_ThatShowsTooLittle_LowersNoDraw()
    {
        var card = new MeasuredCard(ShippedScenarioTests.Read("floatplane.yaml"));

        var loads = card.Reconciled(card.Of(setup => setup, (reading, value) => reading.Kind == ReadingKind.BusVolts ? value : value * 0.8)).Loads;

        Assert.DoesNotContain(loads, load => load.Amperes < load.Predicted * (1 - Tolerances.CurrentFraction));
    }

    /// <summary>Only that finding, and no other cause that fits the same readings.</summary>
    private static Finding AssertNamed(string code, string part, string file, Func<TestSetup, TestSetup> change, Func<ExpectedReading, double, double>? shown = null)
    {
        var card = new MeasuredCard(ShippedScenarioTests.Read(file));

        var result = card.Reconciled(card.Of(change, shown));

        var finding = Assert.Single(result.Findings);
        Assert.Equal((code, part), (finding.Code, finding.Part));
        Assert.DoesNotContain("also fit", finding.Message, StringComparison.Ordinal);
        return finding;
    }

    private static Func<TestSetup, TestSetup> Aircraft(Func<Scenario, Scenario> change) => setup => setup with { Scenario = change(setup.Scenario) };

    private static Func<TestSetup, TestSetup> Step(ActionVerb verb, string part) => setup => setup with { Steps = setup.Steps.Add(new TimelineAction(verb, part)) };

    private static Scenario With(Scenario scenario, string name, Func<Feed, Feed> change) =>
        scenario with { Feeds = [.. scenario.Feeds.Select(feed => feed.Name == name ? change(feed) : feed)] };

    private static Scenario WithBattery(Scenario scenario, string name, Func<Battery, Battery> change) =>
        scenario with { Batteries = [.. scenario.Batteries.Select(battery => battery.Name == name ? change(battery) : battery)] };

    private static Scenario WithLoad(Scenario scenario, string name, Func<Load, Load> change) =>
        scenario with { Loads = [.. scenario.Loads.Select(load => load.Name == name ? change(load) : load)] };

    private static Func<TestSetup, TestSetup> Drawing(string load, double factor) =>
        Aircraft(aircraft => WithLoad(aircraft, load, fitted => fitted with { Demand = Times(fitted.Demand, factor) }));

    private static Demand Times(Demand demand, double factor) => demand switch
    {
        ConstantCurrent current => new ConstantCurrent(current.Current * factor),
        ConstantPower power => new ConstantPower(power.Power * factor),
        ConstantResistance resistance => new ConstantResistance(Resistance.FromOhms(resistance.Resistance.Ohms / factor)),
        _ => demand,
    };

    private static TheoryData<string, string> Each(Func<Scenario, IEnumerable<string>> names)
    {
        var data = new TheoryData<string, string>();
        foreach (var file in Files)
        {
            foreach (var name in names(ShippedScenarioTests.Read(file)))
                data.Add(file, name);
        }

        return data;
    }
}
