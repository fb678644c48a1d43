using System.Globalization;

namespace Endurance.Components;

/// <summary>An American wire gauge number; 0 is 1/0, -1 is 2/0, -2 is 3/0, -3 is 4/0.</summary>
/// <param name="Number">-3 (thickest) to 40.</param>
public readonly record struct WireGauge(int Number)
{
    public override string ToString() => Number switch
    {
        > 0 => string.Create(CultureInfo.InvariantCulture, $"{Number} AWG"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{1 - Number}/0 AWG"),
    };
}
