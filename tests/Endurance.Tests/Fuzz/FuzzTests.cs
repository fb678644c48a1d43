using System.Globalization;
using Endurance.Fuzz;
using Endurance.Simulation;
using Endurance.Tests.Yaml;
using Endurance.Yaml;

namespace Endurance.Tests.Fuzz;

/// <summary>Two thousand drawn networks and as many damaged texts; more of both is a command of their own.</summary>
public sealed class FuzzTests
{
    private const int Block = 250;

    public static TheoryData<int> FirstSeeds => [.. Enumerable.Range(0, 2000 / Block).Select(block => block * Block)];

    [Theory]
    [MemberData(nameof(FirstSeeds))]
    public void Networks_OfEverySeed_HoldTheLaws(int first) => AssertHeld("networks", NetworkOracle.Check, first);

    [Theory]
    [MemberData(nameof(FirstSeeds))]
    public void Texts_OfEverySeed_AreReadOrRefusedInOrder(int first) =>
        AssertHeld("texts", new TextOracle([.. Directory.GetFiles(Folders.Scenarios, "*.yaml").Order(StringComparer.Ordinal).Select(File.ReadAllText)]).Check, first);

    /// <summary>A load comes back at the very instant at which no step forward has an operating point with it: hundreds of failing solves a round.</summary>
    [Theory]
    [InlineData(32994, "load8")]
    [InlineData(96961, "load7")]
    public void Network_WhoseLoadComesBackAtTheInstantOfItsCollapse_ChattersAfterAHundredRounds(int seed, string load)
    {
        var scenario = ScenarioReader.ReadText("drawn.yaml", NetworkText.Of(seed)).Scenario!;

        var run = new Simulator(scenario).RunUntilBreakOff(scenario.FailureCases[0], new SimulationOptions());

        Assert.Equal($"{load} switches itself on and off without end", run.BreakOff!.Words);
        Assert.InRange(run.Events.Count(happened => happened.Kind == EventKind.LoadBack && happened.Part == load), 20, 100);
    }

    /// <summary>
    /// 57024: a charger beside a self-heating diode, whose lowered power was taken for a collapse once the junction had moved; 700512: a charge
    /// limit that lets go early in a step.
    /// </summary>
    [Theory]
    [InlineData(57024)]
    [InlineData(700512)]
    public void Network_AtHalfTheTolerance_TellsTheSame(int seed) => Assert.Equal(Verdict.Held, NetworkOracle.CheckText(NetworkText.Of(seed), isThorough: true));

    private static void AssertHeld(string name, Func<int, Verdict> check, int first)
    {
        using var told = new StringWriter(CultureInfo.InvariantCulture);

        var code = Campaign.Run(name, check, Block, first, told);

        Assert.True(code == 0, told.ToString());
    }
}
