using System.Collections.Immutable;
using Endurance.Scenarios;

namespace Endurance.Studies.Sweeps;

/// <summary>What one tolerance alone does, or a group that moves together.</summary>
/// <param name="Tolerances">One, or those of the group.</param>
/// <param name="Low">All cases at its 5 % point; the value of a group is that share.</param>
/// <param name="High">All cases at its 95 % point; the value of a group is that share.</param>
public sealed record SensitivityRow(ImmutableArray<Tolerance> Tolerances, SweepPoint Low, SweepPoint High)
{
    /// <summary>Path of the quantity, or name of the group.</summary>
    public string Quantity => Tolerances[0].Source;

    public bool IsGroup => Tolerances.Length > 1;
}
