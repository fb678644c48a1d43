using Endurance.Quantities;

namespace Endurance.Studies.BatteryCurves;

/// <summary>How long a full battery gives one constant current.</summary>
public sealed record BatteryCurveRow
{
    public required Current Current { get; init; }

    /// <summary>At the scenario's temperature and health, by the Peukert law or the data sheet's points.</summary>
    public required Duration Lasts { get; init; }

    /// <summary>The same by the kinetic model; <see langword="null"/> when no wells have the battery's lifetimes.</summary>
    public required Duration? LastsKinetic { get; init; }

    /// <summary>Of a new battery at 25 degC, by the same law as <see cref="Lasts"/>.</summary>
    public required Duration LastsNew { get; init; }

    /// <summary>As stated for this current, new and warm, to the end voltage stated; <see langword="null"/>: nothing was stated.</summary>
    public required Duration? Given { get; init; }
}
