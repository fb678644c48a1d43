using System.Collections.Immutable;
using Endurance.Quantities;

namespace Endurance.Studies.LoadAnalysis;

/// <summary>What is asked of the alternators that feed the same buses, in one phase of flight.</summary>
/// <param name="Alternators">Those switched on as drawn that reach a bus in common.</param>
/// <param name="Phase"><see langword="null"/>: what is on in every phase.</param>
/// <param name="Rated">Their ratings together.</param>
/// <param name="Load">Mean load of the buses they reach; a battery's charge current is not in it.</param>
public sealed record AlternatorShare(ImmutableArray<string> Alternators, string? Phase, Current Rated, LoadTotal Load)
{
    /// <summary>Share of the output that the continuous load may take where neither placard nor monitor is fitted: FAA AC 43.13-1B, paragraph 11-35, page 11-12.</summary>
    public const double Limit = 0.8;

    /// <summary>Where <see cref="Limit"/> comes from.</summary>
    public const string Source = "FAA AC 43.13-1B, paragraph 11-35, page 11-12";

    /// <summary>Mean load over rating.</summary>
    public double Fraction => Load.Mean / Rated;

    public bool IsWithin => Fraction <= Limit;
}
