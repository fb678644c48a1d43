namespace Endurance.Scenarios;

/// <summary>Rises from a bound to the likeliest value and falls to the other bound.</summary>
/// <param name="Low">Not above <paramref name="Likeliest"/>.</param>
/// <param name="Likeliest">Between the bounds.</param>
/// <param name="High">Not below <paramref name="Likeliest"/>, above <paramref name="Low"/>.</param>
public sealed record Triangular(double Low, double Likeliest, double High) : Distribution
{
    public override double Quantile(double share) => MathNet.Numerics.Distributions.Triangular.InvCDF(Low, High, Likeliest, share);
}
