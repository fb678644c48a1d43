using Endurance.Numerics;

namespace Endurance.Tests.Numerics;

public sealed class RungeKuttaTests
{
    private static double Swing(double t) => Math.Exp(Math.Sin(t));

    private static readonly Equation SwingEquation = new((t, y) => y * Math.Cos(t));

    public static TheoryData<string, int> Orders => new() { { "Dormand-Prince", 5 }, { "Bogacki-Shampine", 3 } };

    [Theory]
    [MemberData(nameof(Orders))]
    public void Steps_Halved_ConvergeWithTheirOrder(string pair, int order) =>
        Assert.Equal(order, Math.Log2(ErrorAtEnd(pair, 64) / ErrorAtEnd(pair, 128)), 0.2);

    [Theory]
    [MemberData(nameof(Orders))]
    public void Step_Halved_ErrsByOnePowerMore(string pair, int order) =>
        Assert.Equal(order + 1, Math.Log2(OneStep(pair, 0.05, 1) / OneStep(pair, 0.025, 1)), 0.2);

    [Theory]
    [InlineData("Dormand-Prince", 0.25, 5)]
    [InlineData("Dormand-Prince", 0.6, 5)]
    [InlineData("Dormand-Prince", 0.75, 5)]
    [InlineData("Bogacki-Shampine", 0.25, 4)]
    [InlineData("Bogacki-Shampine", 0.4, 4)]
    [InlineData("Bogacki-Shampine", 0.75, 4)]
    public void DenseOutput_StepHalved_ErrsByThePowerOfItsDegree(string pair, double theta, int power) =>
        Assert.Equal(power, Math.Log2(OneStep(pair, 0.05, theta) / OneStep(pair, 0.025, theta)), 0.2);

    [Theory]
    [MemberData(nameof(Orders))]
    public void ErrorEstimate_StepHalved_FallsByThePowerOfTheOrder(string pair, int order)
    {
        double Estimate(double h) => Begin(pair, SwingEquation, 0.3, Swing(0.3)).TryStep(SwingEquation, 0.3, [Swing(0.3)], h, 1);

        Assert.Equal(order, Math.Log2(Estimate(0.05) / Estimate(0.025)), 0.2);
    }

    [Theory]
    [MemberData(nameof(Orders))]
    public void Step_PolynomialOfTheOrder_IsExact(string pair, int order)
    {
        var equation = new Equation((t, _) => order * Math.Pow(t, order - 1));
        var method = Begin(pair, equation, 1, 1);

        method.TryStep(equation, 1, [1], 2, 1);

        Assert.Equal(Math.Pow(3, order), method.End[0], 1e-11);
    }

    [Fact]
    public void Interpolate_AtTheEnd_IsTheEndItself()
    {
        var method = Begin("Dormand-Prince", SwingEquation, 0.3, Swing(0.3));

        method.TryStep(SwingEquation, 0.3, [Swing(0.3)], 0.7, 1);

        Assert.Equal(method.End[0], method.Interpolate(1, 0));
        Assert.Equal(method.End[0], method.Interpolate(1 - 1e-9, 0), 1e-8);
    }

    [Fact]
    public void DenseOutput_PolynomialOfDegreeFour_IsExactAndWithoutErrorEstimate()
    {
        var equation = new Equation((t, _) => 4 * Math.Pow(t, 3));
        var method = Begin("Dormand-Prince", equation, 1, 1);

        var error = method.TryStep(equation, 1, [1], 2, 1);

        Assert.Equal(0, error, 1e-12);
        foreach (var theta in new[] { 0, 0.1, 0.5, 0.9, 1 })
            Assert.Equal(Math.Pow(1 + (2 * theta), 4), method.Interpolate(theta, 0), 1e-11);
    }

    [Fact]
    public void TryStep_SystemWithoutValueAtAStage_GivesInfinity()
    {
        var equation = new Equation((t, _) => t > 0.5 ? double.NaN : 1);

        var error = Begin("Dormand-Prince", equation, 0, 0).TryStep(equation, 0, [0], 1, 1);

        Assert.Equal(double.PositiveInfinity, error);
    }

    [Fact]
    public void TryStep_ComponentNotControlled_LeavesTheErrorAlone()
    {
        var equation = new Equation((t, _) => Math.Sin(50 * t));
        var method = new RungeKutta(RungeKuttaPair.DormandPrince, 1, []);

        Assert.Equal(0, method.TryStep(equation, 0, [0], 1, 1e-12));
    }

    [Fact]
    public void Interpolate_OfSeveralComponents_GivesEachAtTheEndAndInside()
    {
        var system = new Powers();
        var method = new RungeKutta(RungeKuttaPair.DormandPrince, 3, [1, 1, 1]);
        system.TryEvaluate(0, [0, 0, 0], method.FirstRates);
        method.TryStep(system, 0, [0, 0, 0], 2, 1);
        var y = new double[3];

        method.Interpolate(1, y);
        Assert.Equal([2, 4, 8], y.Select(value => Math.Round(value, 11)));

        method.Interpolate(0.5, y);
        Assert.Equal([1, 1, 1], y.Select(value => Math.Round(value, 11)));
    }

    [Fact]
    public void ErrorEstimate_ScaleAndTolerance_DivideIt()
    {
        double Estimate(double scale, double tolerance)
        {
            var method = new RungeKutta(RungeKuttaPair.DormandPrince, 1, [scale]);
            SwingEquation.TryEvaluate(0.3, [Swing(0.3)], method.FirstRates);
            return method.TryStep(SwingEquation, 0.3, [Swing(0.3)], 0.5, tolerance);
        }

        Assert.Equal(Estimate(1, 1) / 10, Estimate(10, 1), 1e-18);
        Assert.Equal(Estimate(1, 1) * 100, Estimate(1, 0.01), 1e-15);
        Assert.True(Estimate(1, 1) > 1e-9);
    }

    [Theory]
    [MemberData(nameof(Orders))]
    public void ErrorEstimate_KinkInTheStep_IsNoSmallerThanTheErrorOverTheKinkFactor(string pair, int order)
    {
        // y' = max(0, t - c) from 0 to 1: the exact end is (1 - c)^2/2. Near two places of c the estimate goes through zero.
        var factor = (order == 5 ? RungeKuttaPair.DormandPrince : RungeKuttaPair.BogackiShampine).KinkFactor;
        var hidden = new List<double>();
        for (var c = 0.0025; c < 1; c += 0.005)
        {
            var equation = new Equation((t, _) => Math.Max(0, t - c));
            var method = Begin(pair, equation, 0, 0);
            var estimate = method.TryStep(equation, 0, [0], 1, 1);
            var error = Math.Abs(method.End[0] - ((1 - c) * (1 - c) / 2));
            if (error > estimate * factor)
                hidden.Add(c);
        }

        Assert.All(hidden, c => Assert.True(c is (> 0.41 and < 0.45) or (> 0.82 and < 0.85), $"hidden at {c}"));
        Assert.Equal(order == 5 ? 9 : 0, hidden.Count);
    }

    private static double ErrorAtEnd(string pair, int steps)
    {
        const double end = 4;
        var h = end / steps;
        var method = Begin(pair, SwingEquation, 0, 1);
        double[] y = [1];
        for (var i = 0; i < steps; i++)
        {
            method.TryStep(SwingEquation, i * h, y, h, 1);
            method.Accept();
            method.End.CopyTo(y);
        }

        return Math.Abs(y[0] - Swing(end));
    }

    private static double OneStep(string pair, double h, double theta)
    {
        const double from = 0.3;
        var method = Begin(pair, SwingEquation, from, Swing(from));
        method.TryStep(SwingEquation, from, [Swing(from)], h, 1);
        return Math.Abs(method.Interpolate(theta, 0) - Swing(from + (theta * h)));
    }

    private static RungeKutta Begin(string pair, Equation equation, double t, double y)
    {
        var coefficients = pair == "Dormand-Prince" ? RungeKuttaPair.DormandPrince : RungeKuttaPair.BogackiShampine;
        var method = new RungeKutta(coefficients, 1, [1]);
        equation.TryEvaluate(t, [y], method.FirstRates);
        return method;
    }

    private sealed class Equation(Func<double, double, double> rate) : IDifferentialSystem
    {
        public bool TryEvaluate(double t, ReadOnlySpan<double> y, Span<double> rates)
        {
            rates[0] = rate(t, y[0]);
            return !double.IsNaN(rates[0]);
        }
    }

    /// <summary>y = t, t^2, t^3.</summary>
    private sealed class Powers : IDifferentialSystem
    {
        public bool TryEvaluate(double t, ReadOnlySpan<double> y, Span<double> rates)
        {
            (rates[0], rates[1], rates[2]) = (1, 2 * t, 3 * t * t);
            return true;
        }
    }
}
