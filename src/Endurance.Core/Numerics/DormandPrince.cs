namespace Endurance.Numerics;

/// <summary>Explicit Runge-Kutta pair of orders 5 and 4 with dense output of order 4; one workspace, no allocation after construction.</summary>
/// <remarks>
/// Coefficients: Dormand and Prince, J. Comp. Appl. Math. 6 (1980) 19; dense output: Hairer, Norsett and Wanner, Solving
/// Ordinary Differential Equations I, section II.6. Only the components with a scale enter the error estimate.
/// </remarks>
internal sealed class DormandPrince
{
    /// <summary>Number of stages before the one that closes the step.</summary>
    private const int Stages = 6;

    private static readonly double[] Nodes = [0, 1.0 / 5, 3.0 / 10, 4.0 / 5, 8.0 / 9, 1];

    private static readonly double[][] Weights =
    [
        [],
        [1.0 / 5],
        [3.0 / 40, 9.0 / 40],
        [44.0 / 45, -56.0 / 15, 32.0 / 9],
        [19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729],
        [9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656],
    ];

    private static readonly double[] Solution = [35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84];

    private static readonly double[] ErrorWeights =
        [71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40];

    private static readonly double[] DenseWeights =
    [
        -12715105075.0 / 11282082432, 0, 87487479700.0 / 32700410799, -10690763975.0 / 1880347072,
        701980252875.0 / 199316789632, -1453857185.0 / 822651844, 69997945.0 / 29380423,
    ];

    private readonly int size;
    private readonly double[] scales;
    private readonly double[][] rates;
    private readonly double[] start;
    private readonly double[] end;
    private readonly double[] stage;
    private readonly double[] bend;
    private readonly double[] tail;
    private readonly double[] curve;

    /// <param name="size">Number of components.</param>
    /// <param name="scales">One for each of the first components, whose error is controlled: the tolerance is multiplied by it.</param>
    public DormandPrince(int size, double[] scales)
    {
        this.size = size;
        this.scales = scales;
        rates = new double[Stages + 1][];
        for (var i = 0; i < rates.Length; i++)
            rates[i] = new double[size];
        start = new double[size];
        end = new double[size];
        stage = new double[size];
        bend = new double[size];
        tail = new double[size];
        curve = new double[size];
    }

    /// <summary>Longest step in time constants of the fastest decay: the method is stable to 3.3.</summary>
    /// <remarks>Hairer and Wanner, "Solving Ordinary Differential Equations II", IV.2, stability domains of DOPRI methods.</remarks>
    public const double StableStep = 3;

    /// <summary>State at the end of the last step tried.</summary>
    public ReadOnlySpan<double> End => end;

    /// <summary>Where in a step, 0 to 1, the stages after the first are evaluated.</summary>
    public static ReadOnlySpan<double> StageNodes => Nodes;

    /// <summary>Rates at the start of the next step; to be filled before a first step and after every jump.</summary>
    public Span<double> FirstRates => rates[0];

    /// <summary>
    /// Tries one step from <paramref name="y"/>. Returns the largest error of a controlled component over the
    /// tolerance, or positive infinity when the system has no value at a stage.
    /// </summary>
    public double TryStep<TSystem>(TSystem system, double t, ReadOnlySpan<double> y, double h, double tolerance)
        where TSystem : class, IDifferentialSystem
    {
        y.CopyTo(start);
        for (var s = 1; s < Stages; s++)
        {
            Combine(y, h, Weights[s], stage);
            if (!system.TryEvaluate(t + (Nodes[s] * h), stage, rates[s]))
                return double.PositiveInfinity;
        }

        Combine(y, h, Solution, end);
        if (!system.TryEvaluate(t + h, end, rates[Stages]))
            return double.PositiveInfinity;
        PrepareCurve(h);
        return LargestError(h, tolerance);
    }

    /// <summary>Makes the closing rates of the last step the first of the next.</summary>
    public void Accept() => (rates[0], rates[Stages]) = (rates[Stages], rates[0]);

    /// <summary>State inside the last step; <paramref name="theta"/> from 0 to 1.</summary>
    public void Interpolate(double theta, Span<double> y)
    {
        for (var i = 0; i < size; i++)
            y[i] = Interpolate(theta, i);
    }

    /// <summary>One component of the state inside the last step.</summary>
    public double Interpolate(double theta, int i)
    {
        var difference = end[i] - start[i];
        var rest = 1 - theta;
        return start[i] + (theta * (difference + (rest * (bend[i] + (theta * (tail[i] + (rest * curve[i])))))));
    }

    private void PrepareCurve(double h)
    {
        for (var i = 0; i < size; i++)
        {
            var difference = end[i] - start[i];
            bend[i] = (h * rates[0][i]) - difference;
            tail[i] = difference - (h * rates[Stages][i]) - bend[i];
            var sum = 0.0;
            for (var s = 0; s <= Stages; s++)
                sum += DenseWeights[s] * rates[s][i];
            curve[i] = h * sum;
        }
    }

    private double LargestError(double h, double tolerance)
    {
        var worst = 0.0;
        for (var i = 0; i < scales.Length; i++)
        {
            var error = 0.0;
            for (var s = 0; s <= Stages; s++)
                error += ErrorWeights[s] * rates[s][i];
            worst = Math.Max(worst, Math.Abs(h * error) / scales[i]);
        }

        return worst / tolerance;
    }

    private void Combine(ReadOnlySpan<double> y, double h, double[] weights, double[] target)
    {
        for (var i = 0; i < size; i++)
        {
            var sum = 0.0;
            for (var s = 0; s < weights.Length; s++)
                sum += weights[s] * rates[s][i];
            target[i] = y[i] + (h * sum);
        }
    }
}
