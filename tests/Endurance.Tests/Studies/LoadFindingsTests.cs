using Endurance.Components;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Tests.Simulation.Events;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Studies;

public sealed class LoadFindingsTests
{
    [Theory]
    [InlineData(null, "Warning", "1 V", "radio is essential and has no minimum voltage: it counts as alive down to 1 V, long after any equipment has stopped. Give `minimum` from its manual.")]
    [InlineData(10.5, "Caution", "10.5 V", "radio is essential and has no minimum voltage: it is judged at the cutoff of bus, 10.5 V. Give `minimum` from its manual.")]
    public void EssentialLoad_WithoutMinimum_LivesTooLong(double? cutoff, string severity, string value, string message)
    {
        var scenario = Ramp.Standing(12.5, Amperes("radio", "bus", 1), Amperes("lamp", "bus", 1) with { IsEssential = false }) with { Buses = [Bus("bus", cutoff)] };

        FindingAssert.Is(scenario.Judge(), new Finding("no-minimum", Enum.Parse<Severity>(severity), "radio", value, message));
    }

    [Fact]
    public void ConstantCurrent_OfWhatStartsUp_IsProbablyConstantPower()
    {
        var display = Amperes("display", "bus", 2.5, 10).Restarting(11, 45);
        var scenario = Ramp.Standing(12.5, display, Watts("screen", "bus", 30, 10).Restarting(11), Amperes("radio", "bus", 1, 10));

        FindingAssert.Is(scenario.Judge(), new Finding("current-of-a-supply", Severity.Caution, "display", "2.5 A",
            "display starts up like equipment with a switching supply, which draws constant power, yet has a constant 2.5 A. If that was measured at about 14 V, it draws 3.5 A at 10 V: give `power: 35 W` instead."));
    }

    [Theory]
    [InlineData(5, 1, true)]
    [InlineData(7.1, 1, false)]
    [InlineData(5, 0.3, false)]
    public void Peak_DrawnAllTheTime_IsHardlyTheMean(double peak, double duty, bool found)
    {
        var scenario = Ramp.Standing(12.5, Watts("strobes", "bus", 70, 5) with { Peak = Current.FromAmperes(peak), Duty = duty });

        FindingAssert.Is(scenario.Judge(), new Finding("peak-as-mean", Severity.Caution, "strobes", "5 A",
            "strobes draws its peak of 5 A all the time. If that is a short draw, give the mean, or a `duty`; if it is steady, leave `peak` out."), found);
    }
}
