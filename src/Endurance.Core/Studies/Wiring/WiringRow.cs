using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Findings;
using Endurance.Quantities;

namespace Endurance.Studies.Wiring;

/// <summary>One feed or load branch set against the tables.</summary>
public sealed record WiringRow
{
    /// <summary>Name of the feed or load.</summary>
    public required string Part { get; init; }

    public required WireRun Run { get; init; }

    public required BranchCurrent Current { get; init; }

    /// <summary>The short current decides on the drop, not the steady one.</summary>
    public required bool IsShortDeciding { get; init; }

    /// <summary>Of the current that decides, at the conductor temperature of the scenario.</summary>
    public required Voltage Drop { get; init; }

    /// <summary>For the current that decides.</summary>
    public required Voltage Limit { get; init; }

    /// <summary>Longest run, there and back, that stays within the limit; <see langword="null"/> without current.</summary>
    public required Length? LongestRun { get; init; }

    /// <summary>Continuous current of the thinnest gauge; <see langword="null"/>: the tables are silent.</summary>
    public required Current? Rating { get; init; }

    /// <summary>Estimate at the steady current; <see langword="null"/> without a rating.</summary>
    public required Temperature? HotConductor { get; init; }

    /// <summary>Smallest breaker, fuse or link in the branch; <see langword="null"/>: none.</summary>
    public required Protection? Protection { get; init; }

    /// <summary>Largest rating that the protection chart allows for the thinnest gauge; <see langword="null"/>: the chart is silent.</summary>
    public required Current? LargestProtection { get; init; }

    /// <summary><see langword="null"/> without a switch in the branch.</summary>
    public required SwitchNeed? Switch { get; init; }

    /// <summary>Thinnest gauge of the table that meets drop, rating and protection chart; <see langword="null"/>: none does.</summary>
    public required WireGauge? SmallestGauge { get; init; }

    public required ImmutableArray<Finding> Findings { get; init; }

    public Current Deciding => IsShortDeciding ? Current.Short : Current.Steady;

    /// <summary>Fails on a warning, asks for a look on a caution.</summary>
    public WiringVerdict Verdict => Findings.Select(finding => finding.Severity).DefaultIfEmpty(Severity.Information).Max() switch
    {
        Severity.Warning or Severity.Error => WiringVerdict.Fail,
        Severity.Caution => WiringVerdict.Check,
        _ => WiringVerdict.Pass,
    };
}
