using Endurance.Components;
using Endurance.Library;
using Xunit;

namespace Endurance.Tests.Reference;

/// <summary>Aircraft wire against solid copper of the same gauge.</summary>
/// <remarks>
/// American wire gauge: d = 0.005 in x 92^((36 - n)/39); copper 1.724e-8 ohm m at 20 degC (piping-designer.com). Rounded
/// ohms per 1000 ft: hyperphysics.phy-astr.gsu.edu, wire gauge table.
/// </remarks>
[Trait("Kind", "Validation")]
public sealed class WireReference
{
    private const double CopperOhmMetres = 1.724e-8;
    private const double MetresPerInch = 0.0254;
    private const double MetresPerThousandFeet = 304.8;

    [Theory]
    [InlineData(24, 25.67)]
    [InlineData(20, 10.15)]
    [InlineData(16, 4.016)]
    [InlineData(12, 1.588)]
    [InlineData(8, 0.6282)]
    [InlineData(4, 0.2485)]
    [InlineData(0, 0.0983)]
    [InlineData(-3, 0.0490)]
    public void SolidCopper_ByTheGaugeFormula_HasThePublishedResistance(int gauge, double ohms) => Assert.Equal(ohms, SolidOhms(gauge), ohms * 0.001);

    // FAA AC 43.13-1B, table 11-9, lists stranded wire at its greatest resistance: not the solid wire of the formula.
    [Theory]
    [InlineData(20, -0.03)]
    [InlineData(16, 0.20)]
    [InlineData(14, 0.21)]
    public void AircraftWire_BesideSolidCopper_DiffersByTheKnownShare(int gauge, double share) => Assert.Equal(share, (TableOhms(gauge) / SolidOhms(gauge)) - 1, 0.005);

    [Fact]
    public void AircraftWire_OfEveryGauge_IsWithinAThirdOfSolidCopper() =>
        Assert.All(WireTable.Rows, row => Assert.InRange(TableOhms(row.Gauge.Number) / SolidOhms(row.Gauge.Number), 0.9, 1.34));

    private static double TableOhms(int gauge) => WireTable.OhmsPerMetreAt20(new WireGauge(gauge))!.Value * MetresPerThousandFeet;

    private static double SolidOhms(int gauge)
    {
        var diameter = 0.005 * MetresPerInch * Math.Pow(92, (36 - gauge) / 39.0);
        return CopperOhmMetres * MetresPerThousandFeet / (Math.PI / 4 * diameter * diameter);
    }
}
