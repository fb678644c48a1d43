using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Tests.Components;

public sealed class ProtectionTests
{
    /// <summary>tau ln(x^2/(x^2 - m^2)), m 1.25: 50 s ln(4/2.4375) at twice the rating, 50 s ln(100/98.4375) at ten times.</summary>
    [Theory]
    [InlineData(20, 24.766)]
    [InlineData(100, 0.78742)]
    public void TimeToOpen_AboveTheFactor_IsThatOfTheFirstOrderThermalModel(double amperes, double seconds) =>
        Assert.Equal(seconds, Breaker(50).TimeToOpen(Current.FromAmperes(amperes))!.Value.Seconds, seconds * 1e-4);

    [Fact]
    public void TimeToOpen_FarAboveTheRating_SpendsAConstantIntegralOfTheSquare()
    {
        const double amperes = 2000;

        Assert.Equal(50 * 1.25 * 1.25 * 10 * 10, Breaker(50).TimeToOpen(Current.FromAmperes(amperes))!.Value.Seconds * amperes * amperes, 0.5);
    }

    [Theory]
    [InlineData(12.4)]
    [InlineData(12.5)]
    public void TimeToOpen_UpToItsFactor_IsNever(double amperes) => Assert.Null(Breaker(50).TimeToOpen(Current.FromAmperes(amperes)));

    [Fact]
    public void TimeToOpen_NoTimeConstant_IsNotModelled() => Assert.Null(Breaker(null).TimeToOpen(Current.FromAmperes(100)));

    private static Protection Breaker(double? seconds) => new()
    {
        Kind = ProtectionKind.Breaker,
        Rating = Current.FromAmperes(10),
        TimeConstant = seconds is { } tau ? Duration.FromSeconds(tau) : null,
    };
}
