using Endurance.Components;
using Endurance.Library;
using Endurance.Quantities;

namespace Endurance.Studies.Wiring;

/// <summary>A wire and its return conductor, if it has one, as one run.</summary>
public sealed record WireRun
{
    /// <summary>Of the wire out.</summary>
    public required WireGauge Gauge { get; init; }

    /// <summary>The thinnest gauge of the run, which the current heats most.</summary>
    public required WireGauge Thinnest { get; init; }

    /// <summary>There and back.</summary>
    public required Length Length { get; init; }

    /// <summary>Conductors there and back at <see cref="Conductor"/>.</summary>
    public required Resistance Resistance { get; init; }

    /// <summary>Conductor temperature at which <see cref="Resistance"/> holds.</summary>
    public required Temperature Conductor { get; init; }

    /// <summary><see langword="null"/> when the wire was given as a resistance, or not at all.</summary>
    public static WireRun? Of(Wire? wire, ReturnPath? back)
    {
        if (wire is not { Gauge: { } gauge, Length: { } length, ConductorTemperature: { } conductor })
            return null;
        var thinnest = back?.Wire.Gauge is { } other && other.Number > gauge.Number ? other : gauge;
        return new WireRun
        {
            Gauge = gauge,
            Thinnest = thinnest,
            Length = length + (back?.Wire.Length ?? default),
            Resistance = wire.Resistance + (back?.Wire.Resistance ?? default),
            Conductor = conductor,
        };
    }

    /// <summary>The whole run in one other gauge at the same conductor temperature.</summary>
    public WireRun With(WireRow row)
    {
        var wire = Wire.OfGauge(row.Gauge, Length, row.OhmsPerMetreAt20, Conductor);
        return this with { Gauge = row.Gauge, Thinnest = row.Gauge, Resistance = wire.Resistance };
    }

    /// <summary>At <see cref="Conductor"/>.</summary>
    public Voltage Drop(Current current) => current * Resistance;

    /// <summary>At another conductor temperature.</summary>
    public Voltage DropAt(Current current, Temperature conductor) =>
        Drop(current) * (Wire.CopperFactorAt(conductor) / Wire.CopperFactorAt(Conductor));

    /// <summary>How long the run may be, in proportion, before it drops so much; <see langword="null"/> without current.</summary>
    public Length? LongestFor(Current current, Voltage allowed) =>
        current > Current.Zero ? Length * (allowed / Drop(current)) : null;

    /// <summary>Estimate of a loaded conductor's temperature.</summary>
    /// <remarks>T2 = T1 + (TR - T1) sqrt(I2/Imax): FAA AC 43.13-1B, page 11-23; the layout of the formula is from memory, unverified.</remarks>
    /// <param name="ambient">T1.</param>
    /// <param name="rated">TR, the temperature that the insulation stands.</param>
    /// <param name="current">I2, zero or more.</param>
    /// <param name="greatest">Imax, the current that heats it to TR; above zero.</param>
    public static Temperature ConductorTemperature(Temperature ambient, Temperature rated, Current current, Current greatest) =>
        Temperature.FromKelvin(ambient.Kelvin + ((rated.Kelvin - ambient.Kelvin) * Math.Sqrt(current / greatest)));
}
