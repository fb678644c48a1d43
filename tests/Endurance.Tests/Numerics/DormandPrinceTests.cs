using Endurance.Numerics;

namespace Endurance.Tests.Numerics;

public sealed class DormandPrinceTests
{
    private static double Swing(double t) => Math.Exp(Math.Sin(t));

    private static readonly Equation SwingEquation = new((t, y) => y * Math.Cos(t));

    [Fact]
    public void Steps_Halved_ConvergeWithOrderFive()
    {
        var order = Math.Log2(ErrorAtEnd(64) / ErrorAtEnd(128));

        Assert.Equal(5, order, 0.2);
    }

    [Fact]
    public void Step_Halved_ErrsByTheSixthPower()
    {
        var order = Math.Log2(OneStep(0.05, 1) / OneStep(0.025, 1));

        Assert.Equal(6, order, 0.2);
    }

    [Theory]
    [InlineData(0.25)]
    [InlineData(0.6)]
    [InlineData(0.75)]
    public void DenseOutput_StepHalved_ErrsByTheFifthPower(double theta)
    {
        var order = Math.Log2(OneStep(0.05, theta) / OneStep(0.025, theta));

        Assert.Equal(5, order, 0.2);
    }

    [Fact]
    public void ErrorEstimate_StepHalved_FallsByTheFifthPower()
    {
        double Estimate(double h) => Begin(SwingEquation, 0.3, Swing(0.3)).TryStep(SwingEquation, 0.3, [Swing(0.3)], h, 1);

        Assert.Equal(5, Math.Log2(Estimate(0.05) / Estimate(0.025)), 0.2);
    }

    [Fact]
    public void Step_PolynomialOfDegreeFive_IsExact()
    {
        var equation = new Equation((t, _) => 5 * Math.Pow(t, 4));
        var method = Begin(equation, 1, 1);

        method.TryStep(equation, 1, [1], 2, 1);

        Assert.Equal(243, method.End[0], 1e-11);
    }

    [Fact]
    public void DenseOutput_PolynomialOfDegreeFour_IsExactAndWithoutErrorEstimate()
    {
        var equation = new Equation((t, _) => 4 * Math.Pow(t, 3));
        var method = Begin(equation, 1, 1);

        var error = method.TryStep(equation, 1, [1], 2, 1);

        Assert.Equal(0, error, 1e-12);
        foreach (var theta in new[] { 0, 0.1, 0.5, 0.9, 1 })
            Assert.Equal(Math.Pow(1 + (2 * theta), 4), method.Interpolate(theta, 0), 1e-11);
    }

    [Fact]
    public void TryStep_SystemWithoutValueAtAStage_GivesInfinity()
    {
        var equation = new Equation((t, _) => t > 0.5 ? double.NaN : 1);

        var error = Begin(equation, 0, 0).TryStep(equation, 0, [0], 1, 1);

        Assert.Equal(double.PositiveInfinity, error);
    }

    [Fact]
    public void TryStep_ComponentNotControlled_LeavesTheErrorAlone()
    {
        var equation = new Equation((t, _) => Math.Sin(50 * t));
        var method = new DormandPrince(1, []);

        Assert.Equal(0, method.TryStep(equation, 0, [0], 1, 1e-12));
    }

    private static double ErrorAtEnd(int steps)
    {
        const double end = 4;
        var h = end / steps;
        var method = Begin(SwingEquation, 0, 1);
        double[] y = [1];
        for (var i = 0; i < steps; i++)
        {
            method.TryStep(SwingEquation, i * h, y, h, 1);
            method.Accept();
            method.End.CopyTo(y);
        }

        return Math.Abs(y[0] - Swing(end));
    }

    private static double OneStep(double h, double theta)
    {
        const double from = 0.3;
        var method = Begin(SwingEquation, from, Swing(from));
        method.TryStep(SwingEquation, from, [Swing(from)], h, 1);
        return Math.Abs(method.Interpolate(theta, 0) - Swing(from + (theta * h)));
    }

    private static DormandPrince Begin(Equation equation, double t, double y)
    {
        var method = new DormandPrince(1, [1]);
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
}
