using System.Collections.Immutable;
using System.Globalization;
using Endurance.Quantities;

namespace Endurance.Simulation;

/// <summary>Parts of a scenario switched each other without end at one instant, where the run broke off.</summary>
/// <param name="Parts">Names of the parts; at least one.</param>
/// <param name="Time">From the timeline's zero.</param>
public sealed record Chatter(ImmutableArray<string> Parts, Duration Time)
{
    /// <summary>What the scenario may lack.</summary>
    public const string Remedy = "Give the load a higher restart voltage or a start-up time, or move a threshold.";

    /// <summary>What happens, as a clause without an end.</summary>
    public string Words => Parts.Length == 1
        ? $"{Parts[0]} switches itself on and off without end"
        : $"{string.Join(", ", Parts[..^1])} and {Parts[^1]} switch each other on and off without end";

    /// <summary>What happens, when, and what to do.</summary>
    /// <param name="failureCase">Name of the failure case; empty where there is none to name.</param>
    public string Told(string failureCase) => string.Create(
        CultureInfo.InvariantCulture, $"{(failureCase.Length > 0 ? $"case {failureCase}: " : "")}{Words} at minute {Time.Minutes:F2}. {Remedy}");
}
