namespace Endurance.Numerics;

/// <summary>The Wright omega function of a real argument: the solution w of w + ln w = z.</summary>
/// <remarks>
/// Equals Lambert's W of e^z, without the overflow of e^z. Started from its expansions and refined by the fourth-order
/// iteration of Fritsch, Shafer and Crowley, Comm. ACM 16 (1973) 123.
/// </remarks>
internal static class WrightOmega
{
    /// <summary>Argument below which the first two terms of the series are exact to rounding.</summary>
    private const double LeastRefined = -18;

    public static double At(double z)
    {
        if (z < LeastRefined)
        {
            var tail = Math.Exp(z);
            return tail * (1 - tail);
        }

        return Refine(z, Start(z));
    }

    /// <summary>The same, started from the value at another argument where that one is near.</summary>
    /// <param name="z">The argument.</param>
    /// <param name="nearZ">An argument at which the value is known.</param>
    /// <param name="nearW">That value.</param>
    public static double At(double z, double nearZ, double nearW)
    {
        const double near = 0.5;
        var d = z - nearZ;
        if (z < LeastRefined || !(Math.Abs(d) <= near))
            return At(z);
        var falling = 1 / (1 + nearW);
        return Refine(z, nearW * (1 + (falling * d * (1 + (0.5 * d * falling * falling)))));
    }

    private static double Refine(double z, double w)
    {
        // Each pass raises the relative error to its fourth power, so one started below the bound is the last.
        const double lastPass = 1e-4;
        for (var i = 0; i < 4; i++)
        {
            var residual = z - w - Math.Log(w);
            var onePlus = 1 + w;
            var correction = 2 * onePlus * (onePlus + (2.0 / 3.0 * residual));
            w *= 1 + (residual * (correction - residual) / (onePlus * (correction - (2 * residual))));
            if (Math.Abs(residual) < lastPass)
                break;
        }

        return w;
    }

    private static double Start(double z)
    {
        if (z < -2)
        {
            var x = Math.Exp(z);
            return x * (1 - x + (1.5 * x * x));
        }

        if (z < 4)
        {
            var d = z - 1;
            return 1 + (d / 2) + (d * d / 16) - (d * d * d / 192);
        }

        var log = Math.Log(z);
        return z - log + (log / z);
    }
}
