using FsCheck;
using FsCheck.Fluent;

namespace Endurance.Tests.Properties;

/// <summary>Draws networks for properties; a failure names the seed that <see cref="RandomNetwork.Of"/> builds it from.</summary>
public static class NetworkArbitrary
{
    public static Arbitrary<RandomNetwork> Networks() => Gen.Choose(0, int.MaxValue).Select(RandomNetwork.Of).ToArbitrary();
}
