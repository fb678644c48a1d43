using System.Text;
using Endurance.Findings;
using Endurance.Yaml;
using Xunit;

namespace Endurance.Tests.Yaml;

/// <summary>Damaged scenarios give diagnostics, never exceptions.</summary>
public class MutationTests
{
    private const int Seed = 20_261;

    [Fact]
    public void Scenario_DamagedAtRandom_IsReadOrRefusedWithoutAnException()
    {
        var random = new Random(Seed);
        var originals = Directory.GetFiles(Folders.Scenarios, "*.yaml").Order(StringComparer.Ordinal).Select(File.ReadAllBytes).ToArray();
        var refused = 0;
        for (var round = 0; round < 300; round++)
        {
            var text = Encoding.Latin1.GetString(Damaged(originals[round % originals.Length], random, round % 3));

            var result = ScenarioReader.ReadText("damaged.yaml", text);

            Assert.Equal(result.Scenario is null, result.Diagnostics.Any(diagnostic => diagnostic.Severity == Severity.Error));
            Assert.DoesNotContain("   at ", DiagnosticRenderer.Render(result.Diagnostics), StringComparison.Ordinal);
            foreach (var laid in result.Layouts.Select(layout => ScenarioReader.ReadText("damaged.yaml", text, layout)))
                Assert.Equal(laid.Scenario is null, laid.Diagnostics.Any(diagnostic => diagnostic.Severity == Severity.Error));
            refused += result.Scenario is null ? 1 : 0;
        }

        Assert.InRange(refused, 150, 300);
    }

    private static byte[] Damaged(byte[] original, Random random, int kind)
    {
        switch (kind)
        {
            case 0:
                var flipped = (byte[])original.Clone();
                for (var i = 0; i < 4; i++)
                    flipped[random.Next(flipped.Length)] ^= (byte)(1 << random.Next(8));
                return flipped;
            case 1:
                return original[..random.Next(original.Length)];
            default:
                var lines = Encoding.Latin1.GetString(original).Split('\n');
                for (var i = 0; i < 3; i++)
                {
                    var (a, b) = (random.Next(lines.Length), random.Next(lines.Length));
                    (lines[a], lines[b]) = (lines[b], lines[a]);
                }

                return Encoding.Latin1.GetBytes(string.Join('\n', lines));
        }
    }
}
