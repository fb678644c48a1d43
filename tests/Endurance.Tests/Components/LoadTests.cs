using Endurance.Components;
using Endurance.Quantities;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Components;

public sealed class LoadTests
{
    /// <summary>Each part has a resistance of its own power of two, so that no part can be left out or counted for another.</summary>
    [Fact]
    public void BranchResistance_EveryKindOfPart_IsTheirSumThereAndBack()
    {
        var load = Amperes("radio", "bus", 5) with
        {
            Wire = Wire(1),
            Switch = new Switch { IsClosed = true, ContactResistance = Resistance.FromMilliohms(2) },
            Breaker = new Protection { Kind = ProtectionKind.Breaker, Rating = Current.FromAmperes(7.5), Resistance = Resistance.FromMilliohms(4) },
            Fuse = new Protection { Kind = ProtectionKind.Fuse, Rating = Current.FromAmperes(10), Resistance = Resistance.FromMilliohms(8) },
            Return = new ReturnPath { Wire = Wire(16) },
        };

        Assert.Equal(31, load.BranchResistance.Milliohms, 1e-9);
    }

    [Fact]
    public void BranchResistance_NoParts_IsNone() => Assert.Equal(0, Amperes("radio", "bus", 5).BranchResistance.Ohms);

    /// <summary>60 W are 5 A at 12 V and 2.5 A at 24 V; 2.4 ohm draw 5 A and 10 A; 5 A stay 5 A.</summary>
    [Fact]
    public void CurrentAt_TwiceTheVoltage_HalvesDoublesOrStaysByTheKindOfLoad()
    {
        (Load Load, double AtDouble)[] loads = [(Watts("strobe", "bus", 60), 2.5), (Ohms("heater", "bus", 2.4), 10), (Amperes("radio", "bus", 5), 5)];
        foreach (var (load, amperes) in loads)
        {
            Assert.Equal(5, load.CurrentAt(Voltage.FromVolts(12)).Amperes, 1e-12);
            Assert.Equal(amperes, load.CurrentAt(Voltage.FromVolts(24)).Amperes, 1e-12);
        }
    }
}
