using System.Globalization;
using Endurance.Fuzz;
using Endurance.Tests.Yaml;

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

    private static void AssertHeld(string name, Func<int, Verdict> check, int first)
    {
        using var told = new StringWriter(CultureInfo.InvariantCulture);

        var code = Campaign.Run(name, check, Block, first, told);

        Assert.True(code == 0, told.ToString());
    }
}
