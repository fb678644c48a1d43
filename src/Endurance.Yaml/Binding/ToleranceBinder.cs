using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Studies.Adjustment;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;
using Endurance.Yaml.Units;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>tolerances</c>: each names a quantity of the scenario and says how it is spread.</summary>
internal static class ToleranceBinder
{
    public static ImmutableArray<Tolerance> Bind(MappingReader top, Scenario scenario)
    {
        var quantities = AdjustableQuantities.Of(scenario);
        ImmutableArray<Tolerance> tolerances = [.. NamedParts.EntriesOf(top, "tolerances").Select(entry => Tolerance(top, quantities, entry)).OfType<Tolerance>()];
        if (top.Reading.Diagnostics.HasErrors)
            return tolerances;
        foreach (var alone in tolerances.GroupBy(tolerance => tolerance.Source, StringComparer.Ordinal).Where(group => group.Count() == 1).Select(group => group.First()).Where(tolerance => tolerance.Group is not null))
            WarnOfAlone(top, alone, tolerances);
        return tolerances;
    }

    /// <summary>A group of one moves together with nothing: a slip, or a leftover.</summary>
    private static void WarnOfAlone(MappingReader top, Tolerance alone, ImmutableArray<Tolerance> tolerances)
    {
        var entry = NamedParts.EntriesOf(top, "tolerances").First(candidate => string.Equals(candidate.Key.Value, alone.Quantity, StringComparison.Ordinal));
        var others = tolerances.Where(tolerance => tolerance != alone).Select(tolerance => tolerance.Group).OfType<string>().Distinct(StringComparer.Ordinal);
        top.Reading.Diagnostics.Add(
            Severity.Warning, "group-of-one", ((MappingNode)entry.Value).Find("group")!.Value.Span, $"no other tolerance is of the group {Quoted.Of(alone.Group!)}, so nothing moves together with {Quoted.Of(alone.Quantity)}",
            "the same group at another tolerance, or none", NearestName.Find(alone.Group!, others));
    }

    private static Tolerance? Tolerance(MappingReader top, ImmutableArray<AdjustableQuantity> quantities, MappingEntry entry)
    {
        var path = entry.Key.Value;
        if (quantities.FirstOrDefault(candidate => string.Equals(candidate.Path, path, StringComparison.Ordinal)) is not { } quantity)
        {
            var ofPart = quantities.Where(candidate => candidate.Path.StartsWith(path.Split('.')[0] + ".", StringComparison.Ordinal)).ToArray();
            if (ofPart.Length > 0 || !IsOfRefusedPart(top, path))
                ReportUnknown(top.Reading, entry.Key, quantities, ofPart);
            return null;
        }

        var place = entry.Value is ScalarNode { IsNull: false } ? entry.Value.Span : entry.Key.Span;
        if (entry.Value is not MappingNode mapping)
        {
            top.Reading.WrongShape(entry.Value, place, Quoted.Of(path), "uniform: [low, high], triangular: [low, likeliest, high] or normal: [mean, deviation]");
            return null;
        }

        var reader = new MappingReader(top.Reading, mapping, StudyKeys.Tolerance, $"the tolerance of {Quoted.Of(path)}", entry.Key.Span);
        return Distribution(reader, quantity) is { } distribution ? new Tolerance(path, distribution, Group(reader)) : null;
    }

    private static string? Group(MappingReader reader) =>
        reader.Text("group") is { } name && NamedParts.HasGoodName(reader.Reading, (ScalarNode)reader.Find("group")!) ? name : null;

    private static Distribution? Distribution(MappingReader reader, AdjustableQuantity quantity)
    {
        var shapes = StudyKeys.Distributions.Where(reader.Has).ToArray();
        if (shapes.Length != 1)
        {
            var message = shapes.Length == 0
                ? $"{reader.Owner} does not say how it is spread"
                : $"{reader.Owner} is spread in {shapes.Length} ways";
            reader.Reading.Diagnostics.Error(
                shapes.Length == 0 ? "missing-key" : "conflicting-keys", reader.Place, message, "one of uniform, triangular, normal");
            return null;
        }

        var range = AdjustableRange.Of(quantity);
        return shapes[0] switch
        {
            "uniform" => Values(reader, "uniform", range, range) is [var low, var high] && Rises(reader, "uniform", low < high)
                ? new Uniform(low, high)
                : null,
            "triangular" => Values(reader, "triangular", range, range, range) is [var low, var likeliest, var high]
                && Rises(reader, "triangular", low <= likeliest && likeliest <= high && low < high)
                ? new Triangular(low, likeliest, high)
                : null,
            _ => Values(reader, "normal", range, AdjustableRange.OfWidth(quantity)) is [var mean, var deviation] ? new Normal(mean, deviation) : null,
        };
    }

    private static bool Rises(MappingReader reader, string key, bool rises)
    {
        if (!rises)
            reader.Error("table-not-rising", key, $"the values of {reader.Owner} do not rise", reader.Known(key).Form);
        return rises;
    }

    /// <summary>In SI, one a range; empty after a diagnostic.</summary>
    private static ImmutableArray<double> Values(MappingReader reader, string key, params ReadOnlySpan<QuantityRange> ranges)
    {
        var form = $"{reader.Known(key).Form}, such as {ranges[0].Example}";
        if (reader.Find(key) is not SequenceNode list)
        {
            reader.Reading.WrongShape(reader.Find(key)!, reader.PlaceOf(key), $"`{key}`", form);
            return [];
        }

        if (list.Items.Length != ranges.Length)
        {
            reader.Error("wrong-shape", key, $"`{key}` has {list.Items.Length} values", form);
            return [];
        }

        var values = ImmutableArray.CreateBuilder<double>(ranges.Length);
        for (var i = 0; i < ranges.Length; i++)
        {
            if (reader.Reading.Quantity(list.Items[i], list.Items[i].Span, key, ranges[i]) is { } value)
                values.Add(value);
        }

        return values.Count == ranges.Length ? values.ToImmutable() : [];
    }

    /// <summary>A part that could not be read has no quantities; that it stands in the file is all there is to know.</summary>
    private static bool IsOfRefusedPart(MappingReader top, string path)
    {
        var part = path.Split('.')[0];
        return top.Reading.Diagnostics.HasErrors
            && top.Entries.Any(section => section.Value is MappingNode mapping && section.Key.Value is not "tolerances" && mapping.Find(part) is not null);
    }

    private static void ReportUnknown(Reading reading, ScalarNode key, ImmutableArray<AdjustableQuantity> quantities, AdjustableQuantity[] ofPart)
    {
        var expected = ofPart.Length > 0
            ? "one of " + string.Join(", ", ofPart.Select(quantity => quantity.Path))
            : $"a part and its quantity, such as ship_battery.health; or {string.Join(", ", AdjustableQuantities.Groups)}";
        reading.Diagnostics.Error(
            "unknown-quantity", key.Span, $"there is no quantity {Quoted.Of(key.Value)}", expected, NearestName.Find(key.Value, quantities.Select(quantity => quantity.Path)));
    }
}
