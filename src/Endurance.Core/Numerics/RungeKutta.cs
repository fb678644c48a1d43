namespace Endurance.Numerics;

/// <summary>Steps a system by an explicit Runge-Kutta pair, with dense output; one workspace, no allocation after construction.</summary>
/// <remarks>
/// Only the components with a scale enter the error estimate and the rates; those after them are running totals, on which no rate
/// depends. The curve inside a step is that of Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I, section II.6: the
/// cubic through both ends and their slopes, and a term of the fourth degree where the pair has weights for it.
/// </remarks>
internal sealed class RungeKutta
{
    private readonly RungeKuttaPair pair;
    private readonly int stages;
    private readonly int size;
    private readonly double[] scales;
    private readonly double[][] rates;
    private readonly double[] start;
    private readonly double[] end;
    private readonly double[] stage;
    private readonly double[] bend;
    private readonly double[] tail;
    private readonly double[] curve;
    private double length;
    private bool isCurveReady;

    /// <param name="pair">The method.</param>
    /// <param name="size">Number of components.</param>
    /// <param name="scales">One for each of the first components, whose error is controlled: the tolerance is multiplied by it.</param>
    public RungeKutta(RungeKuttaPair pair, int size, double[] scales)
    {
        this.pair = pair;
        stages = pair.Nodes.Length;
        this.size = size;
        this.scales = scales;
        rates = new double[stages + 1][];
        for (var i = 0; i < rates.Length; i++)
            rates[i] = new double[size];
        start = new double[size];
        end = new double[size];
        stage = new double[size];
        bend = new double[size];
        tail = new double[size];
        curve = new double[size];
    }

    /// <summary>State at the end of the last step tried.</summary>
    public ReadOnlySpan<double> End => end;

    /// <summary>Where in a step, 0 to 1, the stages after the first are evaluated.</summary>
    public ReadOnlySpan<double> StageNodes => pair.Nodes;

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
        for (var s = 1; s < stages; s++)
        {
            Combine(y, h, pair.Weights[s], stage, scales.Length);
            if (!system.TryEvaluate(t + (pair.Nodes[s] * h), stage, rates[s]))
                return double.PositiveInfinity;
        }

        Combine(y, h, pair.Solution, end, size);
        if (!system.TryEvaluate(t + h, end, rates[stages]))
            return double.PositiveInfinity;
        length = h;
        isCurveReady = false;
        return LargestError(h, tolerance);
    }

    /// <summary>Makes the closing rates of the last step the first of the next.</summary>
    public void Accept() => (rates[0], rates[stages]) = (rates[stages], rates[0]);

    /// <summary>State inside the last step tried, until it is accepted; <paramref name="theta"/> from 0 to 1.</summary>
    public void Interpolate(double theta, Span<double> y)
    {
        if (theta == 1)
        {
            end.CopyTo(y);
            return;
        }

        for (var i = 0; i < size; i++)
            y[i] = Interpolate(theta, i);
    }

    /// <summary>One component of the state inside the last step.</summary>
    public double Interpolate(double theta, int i)
    {
        if (theta == 1)
            return end[i];
        PrepareCurve();
        var difference = end[i] - start[i];
        var rest = 1 - theta;
        return start[i] + (theta * (difference + (rest * (bend[i] + (theta * (tail[i] + (rest * curve[i])))))));
    }

    private void PrepareCurve()
    {
        if (isCurveReady)
            return;
        isCurveReady = true;
        var h = length;
        for (var i = 0; i < size; i++)
        {
            var difference = end[i] - start[i];
            bend[i] = (h * rates[0][i]) - difference;
            tail[i] = difference - (h * rates[stages][i]) - bend[i];
            var sum = 0.0;
            for (var s = 0; s < pair.DenseWeights.Length; s++)
                sum += pair.DenseWeights[s] * rates[s][i];
            curve[i] = h * sum;
        }
    }

    private double LargestError(double h, double tolerance)
    {
        var worst = 0.0;
        for (var i = 0; i < scales.Length; i++)
        {
            var error = 0.0;
            for (var s = 0; s <= stages; s++)
                error += pair.ErrorWeights[s] * rates[s][i];
            worst = Math.Max(worst, Math.Abs(h * error) / scales[i]);
        }

        return worst / tolerance;
    }

    private void Combine(ReadOnlySpan<double> y, double h, double[] weights, double[] target, int count)
    {
        for (var i = 0; i < count; i++)
        {
            var sum = 0.0;
            for (var s = 0; s < weights.Length; s++)
                sum += weights[s] * rates[s][i];
            target[i] = y[i] + (h * sum);
        }
    }
}
