namespace Endurance.Numerics;

/// <summary>Narrows an interval at whose left end a function is not negative and at whose right end it is.</summary>
/// <remarks>
/// Regula falsi kept half a tolerance away from both ends, so that the bracket closes on both sides, with a bisection
/// whenever two tries did not halve the interval, and bisection alone once the function has shown that it is no smooth one.
/// </remarks>
internal static class CrossingFinder
{
    /// <summary>Tries that smooth functions need at most; a jump is not found faster than by halves.</summary>
    private const int Patience = 15;

    /// <summary>A scalar function of one variable.</summary>
    public interface IFunction
    {
        double At(double x);
    }

    /// <summary>Returns an interval no wider than <paramref name="tolerance"/> with the same signs at its ends.</summary>
    public static (double Left, double Right) Narrow<TFunction>(
        ref TFunction function, double left, double valueLeft, double right, double valueRight, double tolerance)
        where TFunction : struct, IFunction
    {
        var lastWidth = double.PositiveInfinity;
        for (var i = 0; right - left > tolerance; i++)
        {
            var width = right - left;
            double x;
            if (i >= Patience || (i % 3 == 2 && width > lastWidth / 2))
                x = left + (width / 2);
            else
                x = left + (width * valueLeft / (valueLeft - valueRight));
            if (i % 3 == 2)
                lastWidth = width;
            x = Math.Clamp(x, left + Math.Min(tolerance / 2, width / 2), right - Math.Min(tolerance / 2, width / 2));
            if (x <= left || x >= right)
                break;
            var value = function.At(x);
            if (value < 0)
                (right, valueRight) = (x, value);
            else
                (left, valueLeft) = (x, value);
        }

        return (left, right);
    }
}
