using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace Endurance.Studies.BatteryFit;

/// <summary>Nonlinear least squares by Levenberg and Marquardt's method, with the usual linearised standard errors.</summary>
/// <remarks>Covariance = s^2 (J'J)^-1 with s^2 = RSS / (n - p); it takes the residuals for independent, which those of one discharge are not.</remarks>
internal sealed record LeastSquares(double[] Values, Matrix<double>? Covariance)
{
    private const double RelativeStep = 1e-6;

    /// <param name="model">Expected observations at some parameters.</param>
    /// <param name="observed">At least as many as parameters.</param>
    /// <param name="initial">Where to start.</param>
    public static LeastSquares Fit(Func<double[], double[]> model, double[] observed, double[] initial)
    {
        Vector<double> Model(Vector<double> parameters, Vector<double> _) => Vector<double>.Build.Dense(model([.. parameters]));
        Matrix<double> Slopes(Vector<double> parameters, Vector<double> _) => Jacobian(model, [.. parameters], observed.Length);
        var index = Vector<double>.Build.Dense(observed.Length, i => i);
        var objective = ObjectiveFunction.NonlinearModel(Model, Slopes, index, Vector<double>.Build.Dense(observed));
        var found = new LevenbergMarquardtMinimizer().FindMinimum(objective, Vector<double>.Build.Dense(initial));
        double[] values = [.. found.MinimizingPoint];
        return new LeastSquares(values, CovarianceOf(model, values, observed));
    }

    /// <summary>One parameter with its standard error.</summary>
    public FittedValue this[int parameter] =>
        new(Values[parameter], Covariance is { } covariance && double.IsFinite(covariance[parameter, parameter]) ? Math.Sqrt(Math.Max(0, covariance[parameter, parameter])) : null);

    private static Matrix<double>? CovarianceOf(Func<double[], double[]> model, double[] values, double[] observed)
    {
        var freedom = observed.Length - values.Length;
        if (freedom <= 0)
            return null;
        var expected = model(values);
        var squares = observed.Select((value, i) => Math.Pow(value - expected[i], 2)).Sum();
        var slopes = Jacobian(model, values, observed.Length);
        return slopes.TransposeThisAndMultiply(slopes).Inverse() * (squares / freedom);
    }

    private static Matrix<double> Jacobian(Func<double[], double[]> model, double[] at, int rows)
    {
        var slopes = Matrix<double>.Build.Dense(rows, at.Length);
        for (var column = 0; column < at.Length; column++)
        {
            var step = RelativeStep * Math.Max(1, Math.Abs(at[column]));
            var (up, down) = (model(Moved(at, column, step)), model(Moved(at, column, -step)));
            for (var row = 0; row < rows; row++)
                slopes[row, column] = (up[row] - down[row]) / (2 * step);
        }

        return slopes;
    }

    private static double[] Moved(double[] at, int index, double step)
    {
        var moved = (double[])at.Clone();
        moved[index] += step;
        return moved;
    }
}
