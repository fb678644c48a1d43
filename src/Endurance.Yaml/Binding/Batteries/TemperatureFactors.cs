using Endurance.Library;
using Endurance.Numerics;
using static System.FormattableString;

namespace Endurance.Yaml.Binding;

/// <summary>Capacity and resistance at the battery's temperature: as typed, else from the chemistry, else unchanged.</summary>
internal static class TemperatureFactors
{
    public static double Capacity(BatteryPart part) => Of(
        part, "capacity_factor", "capacity", part.Values?.CapacityOverTemperature,
        factor => Invariant($"{factor * 100:0.#} % of the capacity"), "capacity not changed by temperature: capacity factor 100 %");

    public static double Resistance(BatteryPart part) => Of(
        part, "resistance_factor", "resistance", part.Values?.ResistanceOverTemperature,
        factor => Invariant($"{factor:0.##} times the resistance"), "resistance not changed by temperature or age: resistance factor 1");

    private static double Of(BatteryPart part, string key, string what, Sourced<PiecewiseLinear>? library, Func<double, string> words, string unchanged)
    {
        if (part.Reader.Has(key))
            return part.Reader.Quantity(key) ?? 1;
        if (library is null)
        {
            part.Reader.Reading.Assume(part.Name, unchanged);
            return 1;
        }

        var celsius = part.Temperature.Celsius;
        var (least, most) = (library.Value.X[0], library.Value.X[^1]);
        var factor = library.Value.At(celsius);
        const double rounding = 1e-9;
        if (celsius < least - rounding || celsius > most + rounding)
        {
            part.Warn(
                "temperature-outside-table", "temperature",
                Invariant($"the {what} of {part.Reader.Owner} at {celsius:0.#} degC is not known: its chemistry's table ends at {Math.Clamp(celsius, least, most):0.#} degC, whose value is used"),
                Invariant($"{least:0.#} degC to {most:0.#} degC, or a `{key}` of your own"));
        }

        part.Library(Invariant($"{words(factor)} at {celsius:0.##} degC"), library.Source);
        return factor;
    }
}
