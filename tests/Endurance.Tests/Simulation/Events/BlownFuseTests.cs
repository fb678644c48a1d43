using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

/// <summary>A heater of 10 A behind its own fuse of 5 A, factor 1.25 and 2 s, and a fan that is of no use without it, on a battery of 12 V.</summary>
public sealed class BlownFuseTests
{
    /// <summary>Cold at the first minute: 2 s ln(4/(4 - 1.25^2)).</summary>
    private static readonly double Blown = 60 + (2 * Math.Log(4 / (4 - (1.25 * 1.25))));

    /// <summary>Nobody replaces a fuse in flight: switched off and on again the heater is as dead as before.</summary>
    [Fact]
    public void Load_SwitchedOnAgainBehindItsBlownFuse_IsLostForGoodFromThatMinute()
    {
        var run = Bench(fused: true).Run(Case(
            At(1, (ActionVerb.Connect, "heater")), At(10, (ActionVerb.Shed, "heater")), At(12, (ActionVerb.Connect, "heater"))));

        Assert.Equal(Blown, run.Load("heater").TimePowered!.Value.Seconds, 1e-3);
        Assert.Equal(LossReason.FeedOpened, run.Load("heater").LostBecause);
        Assert.Equal(12, run.Load("heater").TimeLostForGood.Minutes(), 1e-6);
        Assert.Null(run.Load("heater").TimeShed);
    }

    /// <summary>A load that has lost its need once does not come back with one that only seems to be on.</summary>
    [Fact]
    public void Load_WhoseNeedIsSwitchedOnBehindItsBlownFuse_StaysLost()
    {
        var run = Bench(fused: true).Run(Case(
            At(1, (ActionVerb.Connect, "heater"), (ActionVerb.Connect, "fan")), At(10, (ActionVerb.Shed, "heater")), At(12, (ActionVerb.Connect, "heater"))));

        Assert.Equal(Blown, run.Load("fan").TimeLostForGood!.Value.Seconds, 1e-3);
        Assert.DoesNotContain(run.Events, happened => happened.Kind == EventKind.LoadBack);
    }

    [Fact]
    public void Load_WithItsFuseOpenFromTheStart_IsLostThere()
    {
        var run = Bench(fused: false).Run(Case(At(0, (ActionVerb.Connect, "heater"))));

        Assert.Equal(Duration.Zero, run.Load("heater").TimePowered);
        Assert.Equal(Duration.Zero, run.Load("heater").TimeLostForGood);
        Assert.Equal(LossReason.FeedOpened, run.Load("heater").LostBecause);
        Assert.Equal(0, run.Battery("battery").Delivered.AmpereHours, 1e-9);
    }

    [Fact]
    public void Load_OffBehindItsOpenFuse_IsNotLost() =>
        Assert.Null(Bench(fused: false).Run().Load("heater").TimePowered);

    private static Scenario Bench(bool fused) => Ramp.Standing(
        12,
        Amperes("heater", "bus", 10).Off() with
        {
            Fuse = new Protection
            {
                Kind = ProtectionKind.Fuse, Rating = Current.FromAmperes(5), TimeConstant = Duration.FromSeconds(2), IsClosed = fused,
            },
        },
        Amperes("fan", "bus", 0.5).Off() with { Needs = ["heater"] });
}
