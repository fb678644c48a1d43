using Endurance.Components;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Tests.Simulation.Events;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

public sealed class FeedFindingsTests
{
    [Theory]
    [InlineData(false, true)]
    [InlineData(true, false)]
    public void Contactor_ClosedWithoutCoilCurrent_IsAMistake(bool given, bool found)
    {
        var contactor = new Contactor { IsClosed = true, Coil = given ? new ConstantCurrent(Current.FromAmperes(0.8)) : null };
        var result = Fed(Feed("master", "bus", "far", 2) with { Contactor = contactor }).Judge();

        FindingAssert.Is(result, new Finding("coil-without-current", Severity.Warning, "master", "0 A",
            "The contactor of master is held by its coil, and no coil current is given: usually 0.5 A to 1 A that the battery loses all the time (common practice, no source). Give `coil`; a latching relay is a switch here."), found);
    }

    [Theory]
    [InlineData("far", true)]
    [InlineData("bus", false)]
    [InlineData(null, false)]
    public void Coil_OnTheBusItFeeds_NeverClosesAgain(string? coilBus, bool found)
    {
        var contactor = new Contactor { IsClosed = true, Coil = new ConstantCurrent(Current.FromAmperes(0.8)), CoilBus = coilBus };
        var scenario = Fed(Feed("master", "bus", "far", 2) with { Contactor = contactor }) with { Alternators = [Alternator("alternator", "far", 14, 5, 40)] };

        var result = scenario.Judge(Case(At(5, (ActionVerb.Fail, "alternator"))));

        FindingAssert.None(scenario.Judge(), "coil-fed-by-itself"); // the alternator can still feed the coil
        FindingAssert.Is(result, new Finding("coil-fed-by-itself", Severity.Warning, "master", "far",
            "The coil of master hangs on far, which in this case only master itself can feed: once it lets go it never closes again. Feed the coil from bus."), found);
    }

    [Theory]
    [InlineData("bar", "the bar bus")]
    [InlineData("fuse", "the fuse of common")]
    [InlineData("coil", "the coil supply one")]
    [InlineData("ground", "the ground block")]
    [InlineData("nothing", null)]
    public void Feeds_ThatShareOneThing_AreNotRedundant(string what, string? shared)
    {
        FindingAssertShared(Redundant(what).Judge(), "The feeds first and second of far", "far", shared);
    }

    [Fact]
    public void Inputs_OfOneBar_AreNotRedundant()
    {
        var scenario = Scenario(0.1) with
        {
            Buses = [Bus("bus"), Bus("left"), Bus("right")],
            Batteries = [Ramp.Steady(12.5)],
            Feeds = [Feed("to_left", "bus", "left", 5), Feed("to_right", "bus", "right", 5)],
            Loads = [Amperes("display", "left", 2, 5) with { Inputs = [new LoadInput("left", Schottky(20, 1.05, 6)), new LoadInput("right", Schottky(20, 1.05, 6))] }],
        };

        FindingAssertShared(scenario.Judge(), "The inputs of display", "display", "the bar bus");
    }

    [Theory]
    [InlineData(5, 12, true)]
    [InlineData(5, 4, false)]
    [InlineData(15, 12, false)]
    public void Fuse_OfAFeedThatMayCarryItsBusAlone_MustCarryIt(double rating, double amperes, bool found)
    {
        var fuse = new Protection { Kind = ProtectionKind.Fuse, Rating = Current.FromAmperes(rating) };
        var scenario = Scenario(0.1) with
        {
            Buses = [Bus("one"), Bus("two"), Bus("far"), Bus("beyond")],
            Batteries = [Ramp.Steady(12.5, "first", "one"), Ramp.Steady(12.4, "second", "two")],
            Feeds = [Feed("normal", "one", "far", 5, Schottky(20, 1.05, 6)), Feed("alternate", "two", "far", 5, Schottky(20, 1.05, 6)) with { Fuse = fuse }, Feed("onward", "far", "beyond", 2)],
            Loads = [Amperes("radio", "far", amperes / 2, 5), Watts("display", "beyond", amperes * 6, 5), Amperes("pump", "far", 3, 5).Off()],
        };

        var result = scenario.Judge();

        FindingAssert.Is(result, new Finding("protection-too-small", Severity.Warning, "alternate", "12 A",
            "If alternate has to carry far alone, the loads behind it draw 12 A on average at 12 V; its fuse is 5 A. Use a larger one with wire to match, or shed before the transfer."), found);
    }

    [Fact]
    public void Fuse_ThatOpens_SaysWhatItTook()
    {
        // By the fuse law 10 A through 5 A cold, m 1.25, 1 s: ln(4/(4 - 1.5625)) = 0.495 s after minute 1.
        var fuse = new Protection { Kind = ProtectionKind.Fuse, Rating = Current.FromAmperes(5), TimeConstant = Duration.FromSeconds(1) };
        var scenario = Fed(Feed("spur", "bus", "far", 2) with { Fuse = fuse }) with
        {
            Loads = [Amperes("radio", "far", 1, 5), Amperes("display", "far", 1e-3, 5), Amperes("pump", "far", 9, 5).Off(), Amperes("safe", "bus", 1, 5)],
        };

        var result = scenario.Judge(Case(At(1, (ActionVerb.Connect, "pump"))));

        FindingAssert.Is(result, new Finding("protection-opened", Severity.Warning, "spur", "10 A",
            "The fuse of spur, 5 A, opens at 1 min under 10 A. It takes radio, display and pump with it. Use one that carries this, with wire to match, or carry less."));
    }

    [Theory]
    [InlineData(1, true)]
    [InlineData(10, false)]
    public void Resistor_AboveItsWatts_IsTooHot(double watts, bool found)
    {
        // 1 A through 2 ohm: 2 W.
        var result = Fed(Feed("charge", "bus", "far") with { Resistor = new SeriesResistor(Resistance.FromOhms(2), Power.FromWatts(watts)) }).Judge();

        FindingAssert.Is(result, new Finding("resistor-too-hot", Severity.Warning, "charge", "2 W",
            "The resistor of charge takes up to 2 W and is rated 1 W. Use a larger one, mounted where it can get hot."), found);
    }

    private static void FindingAssertShared(Endurance.Studies.FailureCases.CaseResult result, string what, string part, string? shared)
    {
        if (shared is null)
        {
            FindingAssert.None(result, "feeds-share");
            return;
        }

        FindingAssert.Is(result, new Finding("feeds-share", Severity.Warning, part, shared,
            $"{what} look redundant but share {shared}: one fault there takes them all. Part them as far as their sources."));
    }

    /// <summary>1 A behind one feed.</summary>
    private static Scenario Fed(Feed feed) => Ramp.Standing(12.5, Amperes("radio", "far", 1, 5)) with { Buses = [Bus("bus"), Bus("far")], Feeds = [feed] };

    private static Scenario Redundant(string what)
    {
        var contactor = new Contactor { IsClosed = true, Coil = new ConstantCurrent(Current.FromAmperes(0.8)), CoilBus = "one" };
        var ground = new ReturnPath { Wire = Wire(2), To = "block" };
        var isApart = what is not ("bar" or "fuse");
        Feed Path(string name, string from) => Feed(name, from, "far", 5, Schottky(20, 1.05, 6)) with
        {
            Contactor = what == "coil" ? contactor : null,
            Return = what == "ground" ? ground : null,
        };
        var common = Feed("common", "source", "bus", 2) with { Fuse = what == "fuse" ? new Protection { Kind = ProtectionKind.Fuse, Rating = Current.FromAmperes(10) } : null };
        return Scenario(0.1) with
        {
            Buses = [Bus("source"), Bus("bus"), Bus("one"), Bus("two"), Bus("far")],
            Grounds = [new GroundPoint { Name = "block", Resistance = Resistance.FromMilliohms(1) }],
            Batteries = isApart ? [Ramp.Steady(12.5, "first", "one"), Ramp.Steady(12.4, "second", "two")] : [Ramp.Steady(12.5, "first", "source")],
            Feeds = isApart ? [Path("first", "one"), Path("second", "two")] : [common, Path("first", "bus"), Path("second", "bus")],
            Loads = [Amperes("radio", "far", 2, 5)],
        };
    }
}
