using System.Collections.Immutable;
using System.Globalization;
using Endurance.Quantities;

namespace Endurance.Simulation;

/// <summary>A case could not be computed to its end, and nothing of it counts from there on.</summary>
public sealed record BreakOff
{
    public required BreakOffCause Cause { get; init; }

    /// <summary>Names of the parts that it has to do with; at least one.</summary>
    public required ImmutableArray<string> Parts { get; init; }

    /// <summary>How far the case had come, from the timeline's zero.</summary>
    public required Duration Time { get; init; }

    /// <summary>What happens, as a clause without an end.</summary>
    public required string Words { get; init; }

    /// <summary>What the scenario may lack; a sentence.</summary>
    public required string Remedy { get; init; }

    /// <summary>What happens, when, and what to do.</summary>
    /// <param name="what">What was run, such as "case engine_out"; empty where there is nothing to name.</param>
    public string Told(string what) => string.Create(
        CultureInfo.InvariantCulture, $"{(what.Length > 0 ? what + ": " : "")}{Words} at minute {Time.Minutes:F2}. {Remedy}");

    /// <summary>Parts that switch each other without end at one instant.</summary>
    internal static BreakOff OfChatter(ImmutableArray<string> parts, double seconds) =>
        Switching(parts, seconds, parts.Length == 1 ? $"{parts[0]} switches itself on and off without end" : $"{Listed(parts)} switch each other on and off without end");

    /// <summary>Parts that switch on and off, each time a little later.</summary>
    internal static BreakOff OfSlowChatter(ImmutableArray<string> parts, double seconds, int events) =>
        Switching(parts, seconds, string.Create(CultureInfo.InvariantCulture, $"after {events} events {Listed(parts)} still {(parts.Length == 1 ? "switches" : "switch")} on and off"));

    /// <summary>A battery that moves too fast for the steps that a case is given.</summary>
    internal static BreakOff OfSteps(string battery, double seconds, int steps) => new()
    {
        Cause = BreakOffCause.TooStiff,
        Parts = [battery],
        Time = Duration.FromSeconds(seconds),
        Words = string.Create(CultureInfo.InvariantCulture, $"after {steps} steps {battery} still changes too fast to follow"),
        Remedy = "A capacity or a resistance is far too small, or a polarisation far too large.",
    };

    /// <summary>A network that takes more work than a case is given.</summary>
    internal static BreakOff OfEffort(string bus, double seconds, int iterations) => new()
    {
        Cause = BreakOffCause.TooStiff,
        Parts = [bus],
        Time = Duration.FromSeconds(seconds),
        Words = string.Create(CultureInfo.InvariantCulture, $"after {iterations} iterations the network around {bus} is still too hard to solve"),
        Remedy = "A value is far out of proportion to the others, or a charger or a load works at the edge of what it is fed.",
    };

    /// <summary>A network that was not solved; none of its numbers is to be used.</summary>
    internal static BreakOff OfUnsolved(UnsolvedNetworkException unsolved, double seconds) => new()
    {
        Cause = BreakOffCause.Unsolved,
        Parts = [unsolved.Bus],
        Time = Duration.FromSeconds(seconds),
        Words = $"the network was not solved: {unsolved.Reason}",
        Remedy = unsolved.Remedy,
    };

    private static BreakOff Switching(ImmutableArray<string> parts, double seconds, string words) => new()
    {
        Cause = BreakOffCause.Chattering,
        Parts = parts,
        Time = Duration.FromSeconds(seconds),
        Words = words,
        Remedy = "Give the load a higher restart voltage or a start-up time, or move a threshold.",
    };

    private static string Listed(ImmutableArray<string> parts) =>
        parts.Length == 1 ? parts[0] : $"{string.Join(", ", parts[..^1])} and {parts[^1]}";
}
