using System.Collections.Immutable;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;

namespace Endurance.Studies;

/// <summary>Something that a study could not compute, and went on without.</summary>
/// <param name="What">Such as "case engine_out".</param>
/// <param name="BreakOff">Why, and when.</param>
public sealed record LeftOut(string What, BreakOff BreakOff)
{
    /// <summary>What, why, when, and what to do.</summary>
    public string Told => BreakOff.Told(What);

    /// <summary>Those of some cases that could not be run to their end.</summary>
    public static ImmutableArray<LeftOut> Of(IEnumerable<CaseResult> cases) =>
        [.. cases.Where(result => result.BreakOff is not null).Select(result => new LeftOut(Case(result.Name), result.BreakOff!))];

    /// <summary>A failure case, in words.</summary>
    internal static string Case(string name) => $"case {name}";
}
