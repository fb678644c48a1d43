using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Tests.Components;

public sealed class KineticWellsTests
{
    private static readonly KineticWells Wells = new() { Available = 0.3, RatePerHour = 0.8, Capacity = Charge.FromAmpereHours(25) };

    /// <summary>Manwell and McGowan (1993): in no time only the available well is to be had, in all time both.</summary>
    [Fact]
    public void CapacityIn_NoTimeAndAllTime_IsTheAvailableWellAndBoth()
    {
        Assert.Equal(0.3 * 25, Wells.CapacityIn(Duration.FromHours(1e-9)).AmpereHours, 1e-7);
        Assert.Equal(25, Wells.CapacityIn(Duration.FromHours(1e9)).AmpereHours, 1e-6);
    }

    /// <summary>q(T) = q_max k c T/(1 - exp(-kT) + c (kT - 1 + exp(-kT))), Manwell and McGowan (1993).</summary>
    [Theory]
    [InlineData(0.25)]
    [InlineData(1)]
    [InlineData(20)]
    public void CapacityIn_ATime_IsThatOfTheSource(double hours)
    {
        var decay = Math.Exp(-0.8 * hours);
        var published = 25 * 0.8 * 0.3 * hours / (1 - decay + (0.3 * ((0.8 * hours) - 1 + decay)));

        Assert.Equal(published, Wells.CapacityIn(Duration.FromHours(hours)).AmpereHours, 1e-9);
    }

    /// <summary>For small kT the source's formula is q_max c/(1 - (1 - c) kT/2), to the first order; 1 - exp(-kT) itself has lost its digits there.</summary>
    [Theory]
    [InlineData(9e-6)]
    [InlineData(1.1e-5)]
    public void CapacityIn_AVeryShortTime_GrowsByItsFirstOrder(double decays) =>
        Assert.Equal(25 * 0.3 * 0.7 * decays / 2, Wells.CapacityIn(Duration.FromHours(decays / 0.8)).AmpereHours - (25 * 0.3), 2e-9);

    [Theory]
    [InlineData(0.5)]
    [InlineData(5)]
    [InlineData(60)]
    public void LifetimeAt_ACurrent_DeliversWhatTheWellsGiveInThatTime(double amperes)
    {
        var current = Current.FromAmperes(amperes);
        var lifetime = Wells.LifetimeAt(current);

        Assert.Equal(Wells.CapacityIn(lifetime).AmpereHours, (current * lifetime).AmpereHours, 1e-8);
    }

    [Theory]
    [InlineData(0.3, 0.8, 1, 5, 20)]
    [InlineData(0.3, 0.8, 20, 1, 5)]
    [InlineData(0.3, 0.8, 5, 20, 1)]
    [InlineData(0.6, 0.05, 1, 5, 20)]
    [InlineData(0.15, 12, 0.1, 0.5, 2)]
    public void Through_PointsOfKnownWells_GivesThemBackInAnyOrder(double available, double rate, double first, double second, double third)
    {
        var known = new KineticWells { Available = available, RatePerHour = rate, Capacity = Charge.FromAmpereHours(25) };

        var found = Through(known.CapacityIn, first, second, third)!;

        Assert.Equal(available, found.Available, 1e-7);
        Assert.Equal(rate, found.RatePerHour, rate * 1e-6);
        Assert.Equal(25, found.Capacity.AmpereHours, 1e-5);
    }

    [Fact]
    public void Through_NothingLostAtHighCurrent_HasNoWells() => Assert.Null(Through(_ => Charge.FromAmpereHours(20), 1, 5, 20));

    /// <summary>A capacity that grows as the square of the time is beyond any wells: these give at most in proportion to it.</summary>
    [Fact]
    public void Through_TooMuchLostAtHighCurrent_HasNoWells() => Assert.Null(Through(time => Charge.FromAmpereHours(time.Hours * time.Hours), 1, 5, 20));

    /// <summary>A battery that gives more the faster it is emptied has no wells.</summary>
    [Fact]
    public void Through_MoreAtHighCurrent_HasNoWells() => Assert.Null(Through(time => Charge.FromAmpereHours(30 - time.Hours), 1, 5, 20));

    [Fact]
    public void Through_TwoPoints_Refuses() =>
        Assert.Throws<ArgumentException>(() => KineticWells.Through((Duration.FromHours(1), Charge.FromAmpereHours(10)), (Duration.FromHours(20), Charge.FromAmpereHours(16))));

    private static KineticWells? Through(Func<Duration, Charge> capacity, params double[] hours)
    {
        (Duration, Charge)[] points = [.. hours.Select(Duration.FromHours).Select(time => (time, capacity(time)))];
        return KineticWells.Through(points);
    }
}
