namespace Endurance.Numerics;

/// <summary>A system of ordinary differential equations y' = f(t, y).</summary>
internal interface IDifferentialSystem
{
    /// <summary>Writes f(t, y); <see langword="false"/> when it has no value there.</summary>
    bool TryEvaluate(double t, ReadOnlySpan<double> y, Span<double> rates);
}
