namespace Endurance.Benchmarks.Hand;

/// <summary>The yardstick: the time loop of a network of two batteries and nothing else, with no recording and no allocation.</summary>
internal static class HandLoop
{
    private const double FirstStep = 60;
    private const double Safety = 0.9;
    private const double LargestGrowth = 5;
    private const double LargestCut = 0.2;
    private const double Beyond = 1.05;
    private const int Guards = 5;

    /// <summary>Seconds within which an event is located.</summary>
    private const double TimeTolerance = 1e-4;

    /// <summary>Minute of the cutoff; a stage that cannot be solved, past the end of a battery, halves the step.</summary>
    /// <param name="network">At its start.</param>
    /// <param name="tolerance">Largest error of a charge in one step.</param>
    /// <param name="isFifthOrder">By the pair of order 5, else by that of order 3.</param>
    public static double Minutes<TNetwork>(TNetwork network, double tolerance, bool isFifthOrder)
        where TNetwork : struct, IHandNetwork
    {
        var step = new HandStep();
        var power = isFifthOrder ? -1.0 / 5 : -1.0 / 3;
        double t = 0, z1 = 1, z2 = 1, suggested = FirstStep;
        network.Evaluate(t, z1, z2, out var rate1, out var rate2);
        while (true)
        {
            var h = Math.Min(suggested, (network.ToKnot(z1, z2, rate1, rate2) * Beyond) + TimeTolerance);
            var error = (isFifthOrder ? step.TryFifth(ref network, t, z1, z2, rate1, rate2, h) : step.TryThird(ref network, t, z1, z2, rate1, rate2, h)) / tolerance;
            var change = Safety * Math.Pow(Math.Max(error, 1e-10), power);
            if (!(error <= 1))
            {
                suggested = h * (double.IsFinite(error) ? Math.Max(LargestCut, change) : 0.5);
                continue;
            }

            var grown = h * Math.Clamp(change, LargestCut, LargestGrowth);
            suggested = h < suggested ? Math.Max(suggested, grown) : grown;
            if (!network.IsAnyDue(step.End1, step.End2))
            {
                (t, z1, z2, rate1, rate2) = (t + h, step.End1, step.End2, step.Last1, step.Last2);
                continue;
            }

            var (theta, index) = FirstDue(ref network, ref step, t, h);
            (t, z1, z2) = (t + (theta * h), step.First(theta), step.Second(theta));
            if (network.Pass(index))
                return t / 60;
            network.Evaluate(t, z1, z2, out rate1, out rate2);
        }
    }

    private static (double Theta, int Index) FirstDue<TNetwork>(ref TNetwork network, ref HandStep step, double t, double h)
        where TNetwork : struct, IHandNetwork
    {
        var first = (Theta: double.PositiveInfinity, Index: 0);
        for (var i = 0; i < Guards; i++)
        {
            var end = At(ref network, ref step, t, h, 1, i);
            if (end >= 0)
                continue;
            var theta = Cross(ref network, ref step, t, h, i, end);
            if (theta < first.Theta)
                first = (theta, i);
        }

        return first;
    }

    /// <summary>Regula falsi by the Illinois rule.</summary>
    private static double Cross<TNetwork>(ref TNetwork network, ref HandStep step, double t, double h, int index, double end)
        where TNetwork : struct, IHandNetwork
    {
        double left = 0, right = 1;
        var valueLeft = Math.Max(0, At(ref network, ref step, t, h, 0, index));
        var valueRight = end;
        var last = 1.0;
        var side = 0;
        while (true)
        {
            var theta = left + ((right - left) * valueLeft / (valueLeft - valueRight));
            var value = At(ref network, ref step, t, h, theta, index);
            if (!(Math.Abs(theta - last) * h >= TimeTolerance) || right - left < 1e-12)
                return theta;
            last = theta;
            if (value < 0)
                (right, valueRight, valueLeft, side) = (theta, value, side < 0 ? valueLeft / 2 : valueLeft, -1);
            else
                (left, valueLeft, valueRight, side) = (theta, value, side > 0 ? valueRight / 2 : valueRight, 1);
        }
    }

    private static double At<TNetwork>(ref TNetwork network, ref HandStep step, double t, double h, double theta, int index)
        where TNetwork : struct, IHandNetwork
    {
        double z1 = step.First(theta), z2 = step.Second(theta);
        if (index > 1)
            network.Evaluate(t + (theta * h), z1, z2, out _, out _);
        return network.Guard(index, z1, z2);
    }
}
