using Endurance.Components;
using Endurance.Library;

namespace Endurance.Tests.Reference;

/// <summary>Aircraft wire against solid copper of the same gauge.</summary>
/// <remarks>FAA AC 43.13-1B, table 11-9, lists stranded wire at its greatest resistance: not the solid wire of the gauge formula, which <see cref="AircraftWireTables"/> holds against its table.</remarks>
[Trait("Kind", "Validation")]
public sealed class WireReference
{
    [Theory]
    [InlineData(20, -0.03)]
    [InlineData(16, 0.20)]
    [InlineData(14, 0.21)]
    public void AircraftWire_BesideSolidCopper_DiffersByTheKnownShare(int gauge, double share) => Assert.Equal(share, OverSolid(new WireGauge(gauge)) - 1, 0.005);

    [Fact]
    public void AircraftWire_OfEveryGauge_IsWithinAThirdOfSolidCopper() =>
        Assert.All(WireTable.Rows, row => Assert.InRange(OverSolid(row.Gauge), 0.9, 1.34));

    private static double OverSolid(WireGauge gauge) => WireTable.OhmsPerMetreAt20(gauge)!.Value / SolidCopperWire.OhmsPerMetreAt20(gauge);
}
