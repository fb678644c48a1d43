using System.Collections.Immutable;

namespace Endurance.Numerics;

/// <summary>A function given by points and straight lines between them; constant outside the first and last point.</summary>
public sealed class PiecewiseLinear : IEquatable<PiecewiseLinear>
{
    /// <param name="x">At least one abscissa, strictly rising.</param>
    /// <param name="y">As many ordinates.</param>
    /// <exception cref="ArgumentException">Lengths differ, or the abscissas do not rise.</exception>
    public PiecewiseLinear(ImmutableArray<double> x, ImmutableArray<double> y)
    {
        if (x.IsDefaultOrEmpty || y.IsDefault || x.Length != y.Length)
            throw new ArgumentException("A table needs as many ordinates as abscissas, and at least one of each.", nameof(y));
        for (var i = 1; i < x.Length; i++)
        {
            if (!(x[i] > x[i - 1]))
                throw new ArgumentException("The abscissas of a table must rise.", nameof(x));
        }

        X = x;
        Y = y;
    }

    /// <summary>Strictly rising.</summary>
    public ImmutableArray<double> X { get; }

    /// <summary>As many as <see cref="X"/>.</summary>
    public ImmutableArray<double> Y { get; }

    public static PiecewiseLinear Constant(double value) => new([0.0, 1.0], [value, value]);

    public static PiecewiseLinear FromPoints(params ReadOnlySpan<(double X, double Y)> points)
    {
        var x = ImmutableArray.CreateBuilder<double>(points.Length);
        var y = ImmutableArray.CreateBuilder<double>(points.Length);
        foreach (var point in points)
        {
            x.Add(point.X);
            y.Add(point.Y);
        }

        return new PiecewiseLinear(x.MoveToImmutable(), y.MoveToImmutable());
    }

    /// <summary>The same abscissas with every ordinate multiplied.</summary>
    public PiecewiseLinear Scaled(double factor) => new(X, [.. Y.Select(value => value * factor)]);

    /// <summary>The same abscissas with an amount added to every ordinate.</summary>
    public PiecewiseLinear Raised(double amount) => new(X, [.. Y.Select(value => value + amount)]);

    public double At(double x)
    {
        if (x <= X[0])
            return Y[0];
        for (var i = 1; i < X.Length; i++)
        {
            if (x <= X[i])
                return Y[i - 1] + ((Y[i] - Y[i - 1]) * (x - X[i - 1]) / (X[i] - X[i - 1]));
        }

        return Y[^1];
    }

    public bool Equals(PiecewiseLinear? other) => other is not null && X.SequenceEqual(other.X) && Y.SequenceEqual(other.Y);

    public override bool Equals(object? obj) => Equals(obj as PiecewiseLinear);

    public override int GetHashCode() => HashCode.Combine(X.Length, X[0], Y[0], Y[^1]);
}
