namespace Endurance.Scenarios;

/// <summary>Every value between two bounds is as likely.</summary>
/// <param name="Low">Below <paramref name="High"/>.</param>
/// <param name="High">Above <paramref name="Low"/>.</param>
public sealed record Uniform(double Low, double High) : Distribution
{
    public override double Quantile(double share) => Low + (share * (High - Low));
}
