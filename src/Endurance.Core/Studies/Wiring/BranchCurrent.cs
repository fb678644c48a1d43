using Endurance.Quantities;

namespace Endurance.Studies.Wiring;

/// <summary>What a branch has to carry, without sign.</summary>
/// <param name="Steady">The most it carries for longer than <see cref="BranchCurrents.Intermittent"/> at a time, loads at their mean over duty.</param>
/// <param name="Short">The most at any instant, loads at full duty, inrush and peak included; not below <paramref name="Steady"/>.</param>
/// <param name="Source">Where both came from.</param>
public sealed record BranchCurrent(Current Steady, Current Short, CurrentSource Source)
{
    public BranchCurrent Or(BranchCurrent other) => this with
    {
        Steady = Larger(Steady, other.Steady),
        Short = Larger(Short, other.Short),
    };

    private static Current Larger(Current a, Current b) => a > b ? a : b;
}
