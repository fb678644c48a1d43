using Endurance.Scenarios;
using Xunit;

namespace Endurance.Tests.Scenarios;

public class NearestNameTests
{
    [Theory]
    [InlineData("esential_bus", "essential_bus")]
    [InlineData("ESSENTIAL_BUS", "essential_bus")]
    [InlineData("mian_bus", "main_bus")]
    [InlineData("bus", null)]
    [InlineData("galley", null)]
    [InlineData("", null)]
    [InlineData("main_bus", null)] // a name that exists is no suggestion for itself
    public void Name_Misspelt_FindsTheOneMeant(string typed, string? expected) =>
        Assert.Equal(expected, NearestName.Find(typed, ["main_bus", "essential_bus"]));

    [Theory]
    [InlineData("", "", 0)]
    [InlineData("ab", "ba", 1)]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("abc", "", 3)]
    public void Distance_CountsEdits(string a, string b, int expected) => Assert.Equal(expected, NearestName.Distance(a, b));
}
