namespace Endurance.Scenarios;

/// <summary>The bell curve. Its tails reach any value; a scenario that a tail makes impossible is held at the quantity's bound.</summary>
/// <param name="Mean">Middle.</param>
/// <param name="Deviation">Standard deviation; above zero.</param>
public sealed record Normal(double Mean, double Deviation) : Distribution
{
    public override double Quantile(double share) => MathNet.Numerics.Distributions.Normal.InvCDF(Mean, Deviation, share);
}
