using Endurance.Scenarios;

namespace Endurance.Studies.Adjustment;

/// <summary>One number of a scenario that a study may vary.</summary>
/// <param name="Path">Name of the part and of the quantity, joined by a dot.</param>
/// <param name="Kind">What it is measured in; values are in SI units.</param>
/// <param name="Lowest">Smallest value that makes sense.</param>
/// <param name="Highest">Largest value that makes sense.</param>
/// <param name="Get">Its value in a scenario.</param>
/// <param name="With">The same scenario with another value.</param>
public sealed record AdjustableQuantity(
    string Path, QuantityKind Kind, double Lowest, double Highest, Func<Scenario, double> Get, Func<Scenario, double, Scenario> With)
{
    /// <summary>A value, held within the bounds.</summary>
    public double Held(double value) => Math.Clamp(value, Lowest, Highest);

    /// <summary>The same scenario with a value, held within the bounds.</summary>
    public Scenario Set(Scenario scenario, double value) => With(scenario, Held(value));
}
