using Endurance.Simulation;

namespace Endurance.Tests.Simulation;

/// <summary>Where a charger's input settles, for laws of the power that it takes against the power last guessed.</summary>
public sealed class ChargerInputTests
{
    private const double Exact = 1e-6; // watts

    [Fact]
    public void Input_OfAnOutputThatDoesNotDependOnIt_SettlesInTwoMoves() =>
        Assert.Equal((50, 2), Settle(_ => 50, largest: 1000));

    /// <summary>A part of the move that is left each time, of either sign: W = a + b W has its one solution at a / (1 - b).</summary>
    [Theory]
    [InlineData(0.9)]
    [InlineData(0.5)]
    [InlineData(-0.9)]
    [InlineData(-4)]
    public void Input_ThatFeedsBackInProportion_SettlesAtTheSum(double share)
    {
        var (watts, moves) = Settle(taken => Math.Max(0, 100 + (share * taken)), largest: 2000);

        Assert.Equal(100 / (1 - share), watts!.Value, Exact);
        Assert.InRange(moves, 2, 30);
    }

    /// <summary>The output is limited to 80 W, and above 200 W at the input there is no operating point at which to find that out.</summary>
    [Fact]
    public void Input_ThatRunsAwayPastWhatTheNetworkGives_SettlesAtItsLimit() =>
        Assert.Equal(80, Settle(taken => Math.Min(80, 20 + (1.5 * taken)), largest: 200).Watts!.Value, Exact);

    /// <summary>At a falling step no power is its own answer; the middle of the step is where it stands, as between a diode that blocks and one that conducts.</summary>
    [Fact]
    public void Input_WithASteepFall_SettlesOnTheFall()
    {
        const double steep = 1e4;
        var (watts, _) = Settle(taken => Math.Clamp(60 + (steep * (70 - taken)), 10, 300), largest: 1000);

        Assert.Equal(((steep * 70) + 60) / (steep + 1), watts!.Value, Exact);
    }

    /// <summary>It wants 120 W at any power, and the network gives 100 W.</summary>
    [Fact]
    public void Input_ThatWantsMoreThanTheNetworkGives_SettlesNowhere() =>
        Assert.Null(Settle(_ => 120, largest: 100).Watts);

    [Fact]
    public void Input_ThatWantsJustLessThanTheNetworkGives_Settles() =>
        Assert.Equal(99.9, Settle(taken => 90.9 + (0.09009 * taken), largest: 100).Watts!.Value, 1e-3);

    /// <summary>A junction that moved makes the powers tried before mean nothing: none of them says that the next has no room.</summary>
    [Fact]
    public void Input_ForgettingThatItWasLowered_IsNotCornered()
    {
        var input = new ChargerInput();
        input.Start();
        input.MoveTo(120);
        Assert.True(input.TryLower());

        input.Forget();

        Assert.True(input.MoveTo(80));
        Assert.False(input.IsCornered);
    }

    private static (double? Watts, int Moves) Settle(Func<double, double> taken, double largest)
    {
        const int most = 120;
        var input = new ChargerInput();
        input.Start();
        for (var moves = 1; moves <= most; moves++)
        {
            if (input.Watts > largest)
            {
                if (!input.TryLower())
                    return (null, moves);
                continue;
            }

            if (!input.MoveTo(taken(input.Watts)))
                return (input.Watts, moves);
            if (input.IsCornered)
                return (null, moves);
        }

        throw new InvalidOperationException($"{input.Watts} W is not settled");
    }
}
