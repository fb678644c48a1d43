using Endurance.Components;
using Endurance.Findings;
using Endurance.Library;
using Endurance.Quantities;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Keys;
using Endurance.Yaml.Units;
using static System.FormattableString;

namespace Endurance.Yaml.Binding;

/// <summary>Binds a conductor: by its resistance, or by gauge and length.</summary>
internal static class WireBinder
{
    /// <summary>The wire of a feed or load; <see langword="null"/> when absent or faulty.</summary>
    public static Wire? Bind(string part, MappingReader owner, Temperature ambient) =>
        owner.Mapping("wire", FeedKeys.Wire) is { } reader ? Bind(part, reader, ambient, "wire") : null;

    /// <summary>The conductor whose keys are read; <see langword="null"/> when faulty.</summary>
    /// <param name="part">Feed or load it belongs to.</param>
    /// <param name="reader">With the keys of a wire.</param>
    /// <param name="ambient">Conductor temperature unless one is given.</param>
    /// <param name="word">What an assumption calls it.</param>
    public static Wire? Bind(string part, MappingReader reader, Temperature ambient, string word)
    {
        if (!reader.Has("resistance"))
            return OfGauge(part, reader, ambient, word);
        foreach (var key in (ReadOnlySpan<string>)["gauge", "length", "temperature"])
        {
            if (reader.Has(key))
                reader.Error("conflicting-keys", key, $"{reader.Owner} has both `resistance` and `{key}`", "its resistance, or its gauge and length");
        }

        return reader.Resistance("resistance") is { } ohms ? new Wire { Resistance = ohms } : null;
    }

    private static Wire? OfGauge(string part, MappingReader reader, Temperature ambient, string word)
    {
        if (!reader.Has("gauge") && !reader.Has("length"))
        {
            reader.Reading.Diagnostics.Error("missing-key", reader.Place, $"{reader.Owner} has neither `resistance` nor `gauge` and `length`", "{gauge: 12 AWG, length: 4 ft} or {resistance: 3 mohm}");
            return null;
        }

        foreach (var key in (ReadOnlySpan<string>)["gauge", "length"])
        {
            if (!reader.Has(key))
                reader.ReportMissing(key, reader.Known(key).Form);
        }

        var conductor = reader.Temperature("temperature") ?? ambient;
        var length = reader.Quantity("length");
        if (Gauge(reader) is not { } gauge || length is null)
            return null;
        if (!reader.Has("temperature"))
            reader.Reading.Assume(part, Invariant($"{word} conductor at ambient, {conductor.Celsius:0.##} degC"));
        var perMetre = WireTable.OhmsPerMetreAt20(gauge)!.Value;
        var wire = Wire.OfGauge(gauge, Length.FromMetres(length.Value), perMetre, conductor);
        reader.Reading.Assume(part, Invariant($"{word} of {gauge}: {perMetre * 304.8:0.00##} ohm per 1000 ft at 20 degC, {wire.Resistance.Milliohms:G4} mohm in all"), Origin.Library, WireTable.Source);
        return wire;
    }

    private static WireGauge? Gauge(MappingReader reader)
    {
        if (reader.Text("gauge") is not { } text)
            return null;
        if (GaugeReader.Read(text) is not { } gauge)
        {
            reader.Error("bad-gauge", "gauge", $"{Quoted.Of(text)} is not a wire gauge", reader.Known("gauge").Form, text.Length is > 0 and < 4 && text.All(character => char.IsAsciiDigit(character) || character == '/') ? $"{text} AWG" : null);
            return null;
        }

        if (WireTable.OhmsPerMetreAt20(gauge) is not null)
            return gauge;
        reader.Error("bad-gauge", "gauge", $"the wire table has no {gauge}", GaugeReader.Listed);
        return null;
    }
}
