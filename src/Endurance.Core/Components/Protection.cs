using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>A breaker or a fuse in a feed.</summary>
public sealed record Protection
{
    public required ProtectionKind Kind { get; init; }

    /// <summary>Above zero.</summary>
    public required Current Rating { get; init; }

    /// <summary>Cold resistance; zero or more.</summary>
    public Resistance Resistance { get; init; }

    /// <summary>Multiple m of the rating that it carries for ever; at least 1.</summary>
    public double Factor { get; init; } = 1.25;

    /// <summary>Thermal time constant; above zero. <see langword="null"/>: its tripping is not modelled.</summary>
    public Duration? TimeConstant { get; init; }

    public bool IsClosed { get; init; } = true;

    /// <summary>Time to open from cold at a constant current; <see langword="null"/>: never, or not modelled.</summary>
    /// <remarks>tau ln(x^2/(x^2 - m^2)) with x the current over the rating: the answer of a first-order thermal model, i^2 t = tau m^2 In^2 when large.</remarks>
    public Duration? TimeToOpen(Current current)
    {
        var square = Math.Pow(current / Rating, 2);
        var limit = Factor * Factor;
        return square > limit && TimeConstant is { } tau ? tau * Math.Log(square / (square - limit)) : null;
    }
}
