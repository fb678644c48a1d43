using Endurance.Components;
using Endurance.Library;
using Endurance.Quantities;
using Xunit;

namespace Endurance.Tests.Library;

public class WireTableTests
{
    // FAA AC 43.13-1B, table 11-9, page 11-23: greatest resistance of tin-plated copper wire, ohm per 1000 ft at 20 degC.
    [Theory]
    [InlineData(24, 28.40)]
    [InlineData(22, 16.20)]
    [InlineData(20, 9.88)]
    [InlineData(18, 6.23)]
    [InlineData(16, 4.81)]
    [InlineData(14, 3.06)]
    [InlineData(12, 2.02)]
    [InlineData(10, 1.26)]
    [InlineData(8, 0.70)]
    [InlineData(6, 0.44)]
    [InlineData(4, 0.28)]
    [InlineData(2, 0.18)]
    [InlineData(1, 0.15)]
    [InlineData(0, 0.12)]
    [InlineData(-1, 0.09)]
    [InlineData(-2, 0.07)]
    [InlineData(-3, 0.06)]
    public void Wire_AThousandFeetAt20DegC_HasTheTablesResistance(int gauge, double ohms)
    {
        var perMetre = WireTable.OhmsPerMetreAt20(new WireGauge(gauge))!.Value;
        var wire = Wire.OfGauge(new WireGauge(gauge), Length.FromFeet(1000), perMetre, Temperature.FromCelsius(20));

        Assert.Equal(ohms, wire.Resistance.Ohms, 9);
    }

    [Fact]
    public void Table_HasSeventeenGauges_FromThinToThick()
    {
        Assert.Equal(17, WireTable.Rows.Length);
        Assert.Equal(WireTable.Rows.OrderByDescending(row => row.OhmsPerThousandFeet), WireTable.Rows);
    }

    [Theory]
    [InlineData(13)]
    [InlineData(40)]
    public void Gauge_NotInTheTable_IsNothing(int gauge) => Assert.Null(WireTable.OhmsPerMetreAt20(new WireGauge(gauge)));
}
