namespace Endurance.Simulation;

/// <summary>The squared current of a protection along a step, over that of its rating: c0 + c1 u + c2 u^2 + c3 u^3 with u from 0 to 1.</summary>
/// <param name="Constant">c0.</param>
/// <param name="Linear">c1.</param>
/// <param name="Quadratic">c2.</param>
/// <param name="Cubic">c3.</param>
internal readonly record struct HeatCurve(double Constant, double Linear, double Quadratic, double Cubic)
{
    /// <summary>Step over time constant above which the closed form loses nothing to cancellation.</summary>
    private const double LongStep = 1;

    /// <summary>The cubic through its values at 0, at two nodes between, and at 1 (Newton's divided differences).</summary>
    public static HeatCurve Through(double first, double earlyNode, double early, double lateNode, double late, double last)
    {
        var a = (early - first) / earlyNode;
        var b = (late - early) / (lateNode - earlyNode);
        var c = (last - late) / (1 - lateNode);
        var ab = (b - a) / lateNode;
        var bc = (c - b) / (1 - earlyNode);
        var abc = bc - ab;
        return new(first, a - (ab * earlyNode) + (abc * earlyNode * lateNode), ab - (abc * (earlyNode + lateNode)), abc);
    }

    /// <summary>Heat at u, by d theta/du = k (square - theta).</summary>
    /// <param name="u">Where in the step, 0 to 1.</param>
    /// <param name="start">Heat at 0.</param>
    /// <param name="k">Length of the step over the time constant.</param>
    public double HeatAt(double u, double start, double k)
    {
        var left = Math.Exp(-k * u);
        return k > LongStep
            ? Following(u, k) + ((start - Following(0, k)) * left)
            : (start * left) + Gained(u, k);
    }

    /// <summary>The solution without the part that dies away: the square less its slope over k, and so on.</summary>
    private double Following(double u, double k)
    {
        var slope = Linear + (u * ((2 * Quadratic) + (3 * u * Cubic)));
        var bend = (2 * Quadratic) + (6 * u * Cubic);
        return At(u) - ((slope - ((bend - (6 * Cubic / k)) / k)) / k);
    }

    /// <summary>The integral of k square exp(k (v - u)) over v from 0 to u by three points of Gauss, off by less than 1e-6 of the square.</summary>
    private double Gained(double u, double k)
    {
        const double node = 0.7745966692414834; // the root of 3/5
        var half = u / 2;
        return half * k * ((5.0 / 9 * (Weighted(half * (1 - node), u, k) + Weighted(half * (1 + node), u, k))) + (8.0 / 9 * Weighted(half, u, k)));
    }

    private double Weighted(double v, double u, double k) => At(v) * Math.Exp(k * (v - u));

    private double At(double u) => Constant + (u * (Linear + (u * (Quadratic + (u * Cubic)))));
}
