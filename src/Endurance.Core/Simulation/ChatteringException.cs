using System.Collections.Immutable;
using System.Globalization;

namespace Endurance.Simulation;

/// <summary>Parts of a scenario switch each other without end at one instant.</summary>
public sealed class ChatteringException : Exception
{
    /// <param name="parts">Names of the parts; at least one.</param>
    /// <param name="minutes">When, in minutes from the timeline's zero.</param>
    /// <param name="failureCase">Name of the failure case that was run.</param>
    public ChatteringException(ImmutableArray<string> parts, double minutes, string failureCase = "")
        : base(Describe(parts, minutes, failureCase))
    {
        Parts = parts;
        Minutes = minutes;
    }

    /// <summary>Names of the parts.</summary>
    public ImmutableArray<string> Parts { get; }

    /// <summary>Minutes from the timeline's zero.</summary>
    public double Minutes { get; }

    private static string Describe(ImmutableArray<string> parts, double minutes, string failureCase)
    {
        var place = failureCase.Length > 0 ? $"case {failureCase}: " : "";
        var who = parts.Length == 1
            ? $"{parts[0]} switches itself"
            : $"{string.Join(", ", parts[..^1])} and {parts[^1]} switch each other";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{place}{who} on and off without end at minute {minutes:F2}. Give the load a higher restart voltage or a start-up time, or move a threshold.");
    }
}
