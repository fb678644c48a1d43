using Endurance.Findings;
using Endurance.Library;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Yaml.Diagnostics;
using static System.FormattableString;

namespace Endurance.Yaml.Binding;

/// <summary>One battery of the file while it is read, with its chemistry and what that is scaled by.</summary>
internal sealed class BatteryPart
{
    private readonly int errorsBefore;

    public BatteryPart(string name, MappingReader reader, SystemVoltage system, Temperature ambient)
    {
        Name = name;
        Reader = reader;
        errorsBefore = reader.Reading.Diagnostics.ErrorCount;
        Values = ValuesOf(reader);
        var twelves = system.BatteriesInSeries();
        Cells = reader.Has("cells") ? TypedCells(reader) : Values?.Cells.Value * twelves;
        Twelves = Values is { } values && Cells is { } cells ? (double)cells / values.Cells.Value : twelves;
        if (!reader.Has("temperature"))
            reader.Reading.Assume(name, Invariant($"battery temperature as ambient, {ambient.Celsius:0.##} degC"));
        Temperature = reader.Temperature("temperature") ?? ambient;
    }

    public string Name { get; }

    public MappingReader Reader { get; }

    /// <summary>In series: as typed, else of the chemistry in this system; <see langword="null"/>: not known.</summary>
    public int? Cells { get; }

    /// <summary>12 V batteries in series that it counts for: by its cells where a chemistry says how many make 12 V, else by the system.</summary>
    public double Twelves { get; }

    public Voltage NominalVoltage => Voltage.FromVolts(12 * Twelves);

    /// <summary>What the chemistry supplies; <see langword="null"/> without one.</summary>
    public ChemistryValues? Values { get; }

    public Temperature Temperature { get; }

    /// <summary>Whether something of this battery was refused, so that what follows from it would say nothing new.</summary>
    public bool HasErrors => Reader.Reading.Diagnostics.ErrorCount > errorsBefore;

    /// <summary>A percentage: as typed, else from the chemistry, else 100 %.</summary>
    public double Fraction(string key, string what, Sourced<double>? library)
    {
        if (Reader.Has(key))
            return Reader.Quantity(key) ?? 1;
        if (library is null)
        {
            Reader.Reading.Assume(Name, $"{what} 100 %");
            return 1;
        }

        Library(Invariant($"{what} {library.Value * 100:0.#} %"), library.Source);
        return library.Value;
    }

    public void Library(string text, string source) => Reader.Reading.Assume(Name, text, Origin.Library, source);

    public void Derived(string text) => Reader.Reading.Assume(Name, text, Origin.Derived);

    public void Warn(string code, string key, string message, string? expected) =>
        Reader.Reading.Diagnostics.Add(Severity.Warning, code, Reader.PlaceOf(key), message, expected);

    private static int? TypedCells(MappingReader reader)
    {
        if (reader.Quantity("cells") is not { } cells)
            return null;
        if (cells % 1 == 0)
            return (int)cells;
        reader.Error("not-a-whole-number", "cells", Invariant($"{reader.Owner} has {cells:0.###} cells"), "a whole number, such as 6");
        return null;
    }

    private static ChemistryValues? ValuesOf(MappingReader reader)
    {
        if (!reader.Has("chemistry"))
            return null;

        // Any chemistry will do for a faulty one, so that what it would have supplied is not reported missing too.
        if (reader.Text("chemistry") is not { } word)
            return ChemistryTable.All[0];
        var words = ChemistryTable.All.ToDictionary(values => ChemistryTable.Word(values.Chemistry), StringComparer.Ordinal);
        if (words.TryGetValue(word, out var found))
            return found;
        reader.Error("unknown-word", "chemistry", $"`chemistry` is {Quoted.Of(word)}", reader.Known("chemistry").Form, Nearest(word.ToLowerInvariant(), words.Keys));
        return ChemistryTable.All[0];
    }

    private static string? Nearest(string word, ICollection<string> words) => words.Contains(word) ? word : NearestName.Find(word, words);
}
