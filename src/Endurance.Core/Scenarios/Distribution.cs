namespace Endurance.Scenarios;

/// <summary>How an uncertain quantity is spread: <see cref="Uniform"/>, <see cref="Triangular"/> or <see cref="Normal"/>. Values are in the quantity's SI unit, or a fraction.</summary>
public abstract record Distribution
{
    /// <summary>The value below which a share of all outcomes lies.</summary>
    /// <param name="share">Above 0, below 1.</param>
    public abstract double Quantile(double share);
}
