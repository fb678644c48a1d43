using Endurance.Components;
using Endurance.Library;
using Endurance.Quantities;
using Xunit;

namespace Endurance.Tests.Library;

public class WireTableTests
{
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
