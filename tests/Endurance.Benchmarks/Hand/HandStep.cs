namespace Endurance.Benchmarks.Hand;

/// <summary>One step of two charges by either Runge-Kutta pair, written out, with its dense output.</summary>
internal struct HandStep
{
    private double z1;
    private double z2;
    private double start1;
    private double start2;
    private double end1;
    private double end2;
    private double curve1;
    private double curve2;
    private double length;

    public double Last1 { get; private set; }

    public double Last2 { get; private set; }

    public readonly double End1 => end1;

    public readonly double End2 => end2;

    /// <summary>Bogacki and Shampine's pair of order 3 and 2; returns the largest error of a charge.</summary>
    public double TryThird<TNetwork>(ref TNetwork network, double t, double y1, double y2, double a1, double a2, double h)
        where TNetwork : struct, IHandNetwork
    {
        Begin(y1, y2, a1, a2, h);
        network.Evaluate(t + (h / 2), y1 + (h / 2 * a1), y2 + (h / 2 * a2), out var b1, out var b2);
        network.Evaluate(t + (0.75 * h), y1 + (0.75 * h * b1), y2 + (0.75 * h * b2), out var c1, out var c2);
        end1 = y1 + (h * ((2 * a1) + (3 * b1) + (4 * c1)) / 9);
        end2 = y2 + (h * ((2 * a2) + (3 * b2) + (4 * c2)) / 9);
        network.Evaluate(t + h, end1, end2, out var d1, out var d2);
        (Last1, Last2, curve1, curve2) = (d1, d2, 0, 0);
        var error1 = (-5 * a1) + (6 * b1) + (8 * c1) - (9 * d1);
        var error2 = (-5 * a2) + (6 * b2) + (8 * c2) - (9 * d2);
        return h / 72 * Math.Max(Math.Abs(error1), Math.Abs(error2));
    }

    /// <summary>Dormand and Prince's pair of order 5 and 4; returns the largest error of a charge.</summary>
    public double TryFifth<TNetwork>(ref TNetwork network, double t, double y1, double y2, double a1, double a2, double h)
        where TNetwork : struct, IHandNetwork
    {
        Begin(y1, y2, a1, a2, h);
        network.Evaluate(t + (h / 5), y1 + (h / 5 * a1), y2 + (h / 5 * a2), out var b1, out var b2);
        network.Evaluate(t + (0.3 * h), y1 + (h * Second(a1, b1)), y2 + (h * Second(a2, b2)), out var c1, out var c2);
        network.Evaluate(t + (0.8 * h), y1 + (h * Third(a1, b1, c1)), y2 + (h * Third(a2, b2, c2)), out var d1, out var d2);
        network.Evaluate(t + (8.0 / 9 * h), y1 + (h * Fourth(a1, b1, c1, d1)), y2 + (h * Fourth(a2, b2, c2, d2)), out var e1, out var e2);
        network.Evaluate(t + h, y1 + (h * Fifth(a1, b1, c1, d1, e1)), y2 + (h * Fifth(a2, b2, c2, d2, e2)), out var f1, out var f2);
        end1 = y1 + (h * Solution(a1, c1, d1, e1, f1));
        end2 = y2 + (h * Solution(a2, c2, d2, e2, f2));
        network.Evaluate(t + h, end1, end2, out var g1, out var g2);
        (Last1, Last2) = (g1, g2);
        curve1 = h * Dense(a1, c1, d1, e1, f1, g1);
        curve2 = h * Dense(a2, c2, d2, e2, f2, g2);
        return h * Math.Max(Math.Abs(Error(a1, c1, d1, e1, f1, g1)), Math.Abs(Error(a2, c2, d2, e2, f2, g2)));
    }

    public readonly double First(double theta) => Along(theta, z1, end1, length * start1, length * Last1, curve1);

    public readonly double Second(double theta) => Along(theta, z2, end2, length * start2, length * Last2, curve2);

    private void Begin(double y1, double y2, double a1, double a2, double h) => (z1, z2, start1, start2, length) = (y1, y2, a1, a2, h);

    private static double Along(double theta, double start, double end, double slopeStart, double slopeEnd, double curve)
    {
        var difference = end - start;
        var bend = slopeStart - difference;
        var rest = 1 - theta;
        return start + (theta * (difference + (rest * (bend + (theta * (difference - slopeEnd - bend + (rest * curve)))))));
    }

    private static double Second(double a, double b) => (3.0 / 40 * a) + (9.0 / 40 * b);

    private static double Third(double a, double b, double c) => (44.0 / 45 * a) - (56.0 / 15 * b) + (32.0 / 9 * c);

    private static double Fourth(double a, double b, double c, double d) =>
        (19372.0 / 6561 * a) - (25360.0 / 2187 * b) + (64448.0 / 6561 * c) - (212.0 / 729 * d);

    private static double Fifth(double a, double b, double c, double d, double e) =>
        (9017.0 / 3168 * a) - (355.0 / 33 * b) + (46732.0 / 5247 * c) + (49.0 / 176 * d) - (5103.0 / 18656 * e);

    private static double Solution(double a, double c, double d, double e, double f) =>
        (35.0 / 384 * a) + (500.0 / 1113 * c) + (125.0 / 192 * d) - (2187.0 / 6784 * e) + (11.0 / 84 * f);

    private static double Error(double a, double c, double d, double e, double f, double g) =>
        (71.0 / 57600 * a) - (71.0 / 16695 * c) + (71.0 / 1920 * d) - (17253.0 / 339200 * e) + (22.0 / 525 * f) - (g / 40);

    private static double Dense(double a, double c, double d, double e, double f, double g) =>
        (-12715105075.0 / 11282082432 * a) + (87487479700.0 / 32700410799 * c) - (10690763975.0 / 1880347072 * d)
            + (701980252875.0 / 199316789632 * e) - (1453857185.0 / 822651844 * f) + (69997945.0 / 29380423 * g);
}
