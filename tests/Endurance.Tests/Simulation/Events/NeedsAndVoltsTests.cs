using Endurance.Components;
using Endurance.Scenarios;
using Endurance.Simulation;
using static Endurance.Tests.Parts;

namespace Endurance.Tests.Simulation.Events;

/// <summary>
/// An encoder that wants both its transponder and 12.2 V of its own, on a battery of 12 V under an alternator of 14 V: lost by the first
/// that goes and back with the last that comes, in either order, and with no moment between in which it seems to be back.
/// </summary>
public sealed class NeedsAndVoltsTests
{
    private const double Minutes = 1e-6;

    public static TheoryData<bool, bool> Encoders => new() { { false, false }, { false, true }, { true, false }, { true, true } };

    [Theory]
    [MemberData(nameof(Encoders))]
    public void Encoder_WithoutItsTransponderWhenItsVoltsComeBack_StaysLostSinceTheTransponderWent(bool hasMinimum, bool isLast)
    {
        var run = Bench(hasMinimum, isLast).Run(Case(
            At(5, (ActionVerb.Shed, "transponder")), At(6, (ActionVerb.Fail, "alternator")), At(8, (ActionVerb.Restore, "alternator"))));

        Assert.Equal(5, run.Load("encoder").TimeLostForGood.Minutes(), Minutes);
        Assert.Empty(Returns(run));
    }

    [Theory]
    [MemberData(nameof(Encoders))]
    public void Encoder_WhoseTransponderWentWhileItsVoltsWereLow_StaysLostSinceTheVoltsWent(bool hasMinimum, bool isLast)
    {
        var run = Bench(hasMinimum, isLast).Run(Case(
            At(5, (ActionVerb.Fail, "alternator")), At(6, (ActionVerb.Shed, "transponder")), At(8, (ActionVerb.Restore, "alternator"))));

        Assert.Equal(5, run.Load("encoder").TimeLostForGood.Minutes(), Minutes);
        Assert.Equal(LossReason.BelowMinimum, run.Load("encoder").LostBecause);
        Assert.Empty(Returns(run));
    }

    [Theory]
    [MemberData(nameof(Encoders))]
    public void Encoder_WhoseTransponderComesBackWhileItsVoltsAreLow_StaysLostSinceTheTransponderWent(bool hasMinimum, bool isLast)
    {
        var run = Bench(hasMinimum, isLast).Run(Case(
            At(5, (ActionVerb.Shed, "transponder")), At(6, (ActionVerb.Fail, "alternator")), At(7, (ActionVerb.Connect, "transponder"))));

        Assert.Equal(5, run.Load("encoder").TimeLostForGood.Minutes(), Minutes);
        Assert.Empty(Returns(run));
    }

    [Theory]
    [MemberData(nameof(Encoders))]
    public void Encoder_WhoseTransponderAndThenVoltsComeBack_IsBackWithTheVolts(bool hasMinimum, bool isLast)
    {
        var run = Bench(hasMinimum, isLast).Run(Case(
            At(5, (ActionVerb.Shed, "transponder")), At(6, (ActionVerb.Fail, "alternator")),
            At(7, (ActionVerb.Connect, "transponder")), At(8, (ActionVerb.Restore, "alternator"))));

        Assert.Null(run.Load("encoder").TimeLostForGood);
        Assert.Equal(8, Assert.Single(Returns(run)), Minutes);
    }

    [Theory]
    [MemberData(nameof(Encoders))]
    public void Encoder_WhoseVoltsAndThenTransponderComeBack_IsBackWithTheTransponder(bool hasMinimum, bool isLast)
    {
        var run = Bench(hasMinimum, isLast).Run(Case(
            At(5, (ActionVerb.Fail, "alternator")), At(6, (ActionVerb.Shed, "transponder")),
            At(8, (ActionVerb.Restore, "alternator")), At(9, (ActionVerb.Connect, "transponder"))));

        Assert.Null(run.Load("encoder").TimeLostForGood);
        Assert.Equal(9, Assert.Single(Returns(run)), Minutes);
    }

    [Theory]
    [MemberData(nameof(Encoders))]
    public void Encoder_WhoseVoltsAndTransponderComeBackAtOnce_IsBackThen(bool hasMinimum, bool isLast)
    {
        var run = Bench(hasMinimum, isLast).Run(Case(
            At(5, (ActionVerb.Fail, "alternator"), (ActionVerb.Shed, "transponder")),
            At(8, (ActionVerb.Restore, "alternator"), (ActionVerb.Connect, "transponder"))));

        Assert.Null(run.Load("encoder").TimeLostForGood);
        Assert.Equal(8, Assert.Single(Returns(run)), Minutes);
    }

    private static double[] Returns(SimulationResult run) =>
        [.. run.Events.Where(happened => happened is { Part: "encoder", Kind: EventKind.LoadBack }).Select(happened => happened.Time.Minutes)];

    /// <param name="hasMinimum">Its own minimum and restart; otherwise it is judged at its bus's cutoff.</param>
    /// <param name="isLast">It stands behind its transponder in the list.</param>
    private static Scenario Bench(bool hasMinimum, bool isLast)
    {
        var encoder = Amperes("encoder", "bus", 0.1, hasMinimum ? 12.2 : null) with { Needs = ["transponder"] };
        Load[] loads = [hasMinimum ? encoder.Restarting(13) : encoder, Amperes("transponder", "bus", 2, 10)];
        return Ramp.Standing(12, isLast ? [.. loads.Reverse()] : loads) with
        {
            Buses = [Bus("bus", 12.2)],
            Alternators = [Alternator("alternator", "bus", 14, 1, 400)],
        };
    }
}
