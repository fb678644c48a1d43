using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>Everything in series between two buses; conducts only when every part does. Current is positive from <see cref="From"/> to <see cref="To"/>.</summary>
public sealed record Feed
{
    /// <summary>Resistance given to a feed whose parts would otherwise add up to none.</summary>
    public static readonly Resistance LeastResistance = Resistance.FromMilliohms(0.1);

    public required string Name { get; init; }

    public required string From { get; init; }

    public required string To { get; init; }

    /// <summary>Conducts in the feed's direction.</summary>
    public Diode? Diode { get; init; }

    /// <summary>Name of the diode entry it uses; <see langword="null"/> when written in the feed itself.</summary>
    public string? DiodeName { get; init; }

    public Wire? Wire { get; init; }

    public Contactor? Contactor { get; init; }

    public Switch? Switch { get; init; }

    public Protection? Breaker { get; init; }

    public Protection? Fuse { get; init; }

    public Protection? FusibleLink { get; init; }

    public SeriesResistor? Resistor { get; init; }

    /// <summary>Of a current shunt; zero when there is none.</summary>
    public Resistance Shunt { get; init; }

    public ReturnPath? Return { get; init; }

    /// <summary>Sum of the parts other than the diode's own, zero or more.</summary>
    public Resistance ConductorResistance =>
        (Wire?.Resistance ?? default) + (Contactor?.ContactResistance ?? default) + (Switch?.ContactResistance ?? default)
        + (Breaker?.Resistance ?? default) + (Fuse?.Resistance ?? default) + (FusibleLink?.Resistance ?? default)
        + (Resistor?.Resistance ?? default) + Shunt + (Return?.Wire.Resistance ?? default);
}
