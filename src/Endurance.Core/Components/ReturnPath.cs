using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>The way back to airframe ground.</summary>
public sealed record ReturnPath
{
    /// <summary>Of the return conductor; above zero.</summary>
    public required Wire Wire { get; init; }

    /// <summary>Ground point it ends at, shared with others; <see langword="null"/>: the airframe itself.</summary>
    public string? To { get; init; }
}
