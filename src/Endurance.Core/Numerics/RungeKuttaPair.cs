namespace Endurance.Numerics;

/// <summary>The coefficients of an explicit Runge-Kutta pair whose last stage is the first of the next step.</summary>
internal sealed class RungeKuttaPair
{
    /// <summary>Order 5 with an error estimate of order 4 and a curve of order 4; six solves a step.</summary>
    /// <remarks>Dormand and Prince, J. Comp. Appl. Math. 6 (1980) 19; curve: Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I, II.6.</remarks>
    public static RungeKuttaPair DormandPrince { get; } = new()
    {
        Order = 5,
        Nodes = [0, 1.0 / 5, 3.0 / 10, 4.0 / 5, 8.0 / 9, 1],
        Weights =
        [
            [],
            [1.0 / 5],
            [3.0 / 40, 9.0 / 40],
            [44.0 / 45, -56.0 / 15, 32.0 / 9],
            [19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729],
            [9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656],
        ],
        Solution = [35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84],
        ErrorWeights = [71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40],
        DenseWeights =
        [
            -12715105075.0 / 11282082432, 0, 87487479700.0 / 32700410799, -10690763975.0 / 1880347072,
            701980252875.0 / 199316789632, -1453857185.0 / 822651844, 69997945.0 / 29380423,
        ],
        StableStep = 3,
        KinkFactor = 90,
    };

    /// <summary>Order 3 with an error estimate of order 2 and a cubic curve; three solves a step.</summary>
    /// <remarks>Bogacki and Shampine, Appl. Math. Lett. 2 (1989) 321.</remarks>
    public static RungeKuttaPair BogackiShampine { get; } = new()
    {
        Order = 3,
        Nodes = [0, 1.0 / 2, 3.0 / 4],
        Weights = [[], [1.0 / 2], [0, 3.0 / 4]],
        Solution = [2.0 / 9, 1.0 / 3, 4.0 / 9],
        ErrorWeights = [-5.0 / 72, 1.0 / 12, 1.0 / 9, -1.0 / 8],
        DenseWeights = [],
        StableStep = 2.3,
        KinkFactor = 3.2,
    };

    /// <summary>Order of the solution; the estimate is of the order below.</summary>
    public required int Order { get; init; }

    /// <summary>Where in a step, 0 to 1, each stage stands; without the one that closes the step.</summary>
    public required double[] Nodes { get; init; }

    /// <summary>Weights of the earlier rates in each stage.</summary>
    public required double[][] Weights { get; init; }

    /// <summary>Weights of the rates in the solution.</summary>
    public required double[] Solution { get; init; }

    /// <summary>Weights of the rates, the closing one last, in the estimate of the error.</summary>
    public required double[] ErrorWeights { get; init; }

    /// <summary>Weights of the rates, the closing one last, in the term of the fourth degree of the curve; empty: a cubic.</summary>
    public required double[] DenseWeights { get; init; }

    /// <summary>How many times as large as its estimate the error can be where a rate has a kink inside the step.</summary>
    /// <remarks>
    /// Of max(0, t - c) over a step from 0 to 1, wherever c lies but for the narrow places where the estimate goes through zero.
    /// </remarks>
    public required double KinkFactor { get; init; }

    /// <summary>Longest step in time constants of the fastest decay, below the end of the stable interval: 3.3 and 2.5.</summary>
    /// <remarks>Hairer and Wanner, Solving Ordinary Differential Equations II, IV.2.</remarks>
    public required double StableStep { get; init; }
}
