using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>Reads the values of one mapping by its table of known keys; reports unknown, refused and missing keys at once.</summary>
internal sealed class MappingReader
{
    /// <summary>Stands for a name that could not be read; no file can hold it.</summary>
    public const string NoName = "\0";

    private readonly MappingNode _node;
    private readonly Section _section;

    /// <param name="reading">Takes the diagnostics.</param>
    /// <param name="node">The mapping.</param>
    /// <param name="section">Its keys.</param>
    /// <param name="owner">What a message calls it, such as <c>the battery `ship_battery`</c>.</param>
    /// <param name="place">Where a missing key is reported.</param>
    public MappingReader(Reading reading, MappingNode node, Section section, string owner, SourceSpan place)
    {
        Reading = reading;
        _node = node;
        _section = section;
        Owner = owner;
        Place = place;
        foreach (var entry in node.Entries)
            CheckKey(entry.Key);
        foreach (var key in section.Keys.Where(key => key.IsRequired && !Has(key.Name)))
            ReportMissing(key.Name, key.Form);
    }

    public Reading Reading { get; }

    public string Owner { get; }

    public SourceSpan Place { get; }

    public IEnumerable<MappingEntry> Entries => _node.Entries;

    public bool Has(string key) => _node.Find(key) is not null;

    public DocumentNode? Find(string key) => _node.Find(key)?.Value;

    /// <summary>Where a fault of a key's value is reported.</summary>
    public SourceSpan PlaceOf(string key) => _node.Find(key) is { } entry
        ? entry.Value is ScalarNode { IsNull: false } ? entry.Value.Span : entry.Key.Span
        : Place;

    public void ReportMissing(string key, string form) =>
        Reading.Diagnostics.Error("missing-key", Place, $"{Owner} has no `{key}`", $"{key}: {form}");

    public void Error(string code, string key, string message, string? expected, string? nearest = null) =>
        Reading.Diagnostics.Error(code, PlaceOf(key), message, expected, nearest);

    /// <summary>In SI; <see langword="null"/> when absent or faulty.</summary>
    public double? Quantity(string key)
    {
        if (_node.Find(key) is not { } entry)
            return null;
        return Reading.Quantity(entry.Value, PlaceOf(key), key, Known(key).Range!);
    }

    /// <summary>In SI; the example of the key where the value is missing or faulty, which has been reported.</summary>
    public double RequiredQuantity(string key) => Quantity(key) ?? Known(key).Range!.Placeholder;

    public Temperature? Temperature(string key) => Quantity(key) is { } kelvin ? Quantities.Temperature.FromKelvin(kelvin) : null;

    public Voltage? Voltage(string key) => Quantity(key) is { } volts ? Quantities.Voltage.FromVolts(volts) : null;

    public Current? Current(string key) => Quantity(key) is { } amperes ? Quantities.Current.FromAmperes(amperes) : null;

    public Resistance? Resistance(string key) => Quantity(key) is { } ohms ? Quantities.Resistance.FromOhms(ohms) : null;

    /// <summary>Text on one line; <see langword="null"/> when absent or faulty.</summary>
    public string? Text(string key) =>
        _node.Find(key) is { } entry ? Reading.ScalarAt(entry.Value, PlaceOf(key), key, Known(key).Form)?.Value : null;

    /// <summary>A name; <see cref="NoName"/> when absent or faulty, which has been reported.</summary>
    public string RequiredText(string key) => Text(key) ?? NoName;

    /// <summary>Which of two words stands there; <see langword="null"/> when absent or faulty.</summary>
    public bool? Either(string key, string yes, string no)
    {
        if (!Known(key).Shape.Takes(yes) || !Known(key).Shape.Takes(no))
            throw new InvalidOperationException($"The table of {_section.Kind} does not list {yes} and {no} for {key}.");
        if (Text(key) is not { } word)
            return null;
        if (string.Equals(word, yes, StringComparison.Ordinal))
            return true;
        if (!string.Equals(word, no, StringComparison.Ordinal))
            Error("unknown-word", key, $"`{key}` is {Quoted.Of(word)}", $"{yes} or {no}", NearestName.Find(word, [yes, no]));
        return string.Equals(word, no, StringComparison.Ordinal) ? false : null;
    }

    /// <summary>A mapping inside; <see langword="null"/> when absent or faulty.</summary>
    public MappingReader? Mapping(string key, Section section)
    {
        if (_node.Find(key) is not { } entry)
            return null;
        if (entry.Value is MappingNode mapping)
            return new MappingReader(Reading, mapping, section, $"the {key} of {Owner}", entry.Key.Span);
        if (entry.Value is ScalarNode { IsNull: true })
            Reading.Diagnostics.Error("missing-value", entry.Key.Span, $"`{key}` has no value", Known(key).Form);
        else
            Reading.WrongShape(entry.Value, PlaceOf(key), $"`{key}`", Known(key).Form);
        return null;
    }

    public KnownKey Known(string key) => _section.Find(key) ?? throw new InvalidOperationException($"{_section.Kind} has no key {key} in its table.");

    private void CheckKey(ScalarNode key)
    {
        if (_section.Find(key.Value) is not null)
            return;
        var nearest = NearestName.Find(key.Value, _section.Keys.Select(candidate => candidate.Name));
        Reading.Diagnostics.Error("unknown-key", key.Span, $"{_section.Kind} has no key {Quoted.Of(key.Value)}", $"one of {_section.Listed}", nearest);
    }
}
