using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Yaml.Diagnostics;

namespace Endurance.Yaml.Documents;

/// <summary>Lays a layout over the document it stands in, or an overlay over the scenario it was written for: what it names is replaced, what it names with nothing is removed.</summary>
/// <remarks>
/// Sections are merged by the names of their parts, parts by their keys; the value of a key is replaced whole, so that no value
/// is ever half of one layout and half of another. Every node keeps its place in the text.
/// </remarks>
internal static class LayoutOverlay
{
    public const string Key = "layouts";

    /// <summary>Sections and parts are merged; deeper values are not.</summary>
    private const int MergedLevels = 2;

    /// <summary>In the order of the file.</summary>
    public static ImmutableArray<string> Names(ScenarioDocument document) =>
        [.. Layouts(document).Where(entry => entry.Value is MappingNode).Select(entry => entry.Key.Value)];

    /// <returns><see langword="null"/> after a diagnostic.</returns>
    public static ScenarioDocument? Apply(ScenarioDocument document, string layout, DiagnosticList diagnostics)
    {
        if (Layouts(document).FirstOrDefault(entry => string.Equals(entry.Key.Value, layout, StringComparison.Ordinal))?.Value is not MappingNode overlay)
        {
            var names = Names(document);
            var place = document.Root.Find(Key)?.Key.Span ?? SourceSpan.Nowhere;
            diagnostics.Error(
                "unknown-layout", place, $"there is no layout {Quoted.Of(layout)}",
                names.IsEmpty ? "the scenario as drawn: it has no layouts" : $"one of {string.Join(", ", names)}", NearestName.Find(layout, names));
            return null;
        }

        return Lay(document, overlay, "a layout", diagnostics);
    }

    /// <summary>Lays the sections of another file over the document.</summary>
    public static ScenarioDocument Lay(ScenarioDocument document, ScenarioDocument overlay, DiagnosticList diagnostics) =>
        Lay(document, overlay.Root, "an overlay", diagnostics);

    private static ScenarioDocument Lay(ScenarioDocument document, MappingNode overlay, string kind, DiagnosticList diagnostics)
    {
        foreach (var entry in overlay.Entries.Where(entry => entry.Key.Value is Key or "endurance"))
            diagnostics.Error("unknown-key", entry.Key.Span, $"{kind} has no key {Quoted.Of(entry.Key.Value)}", "sections and keys of the scenario that differ");
        var changes = overlay with { Entries = [.. overlay.Entries.Where(entry => entry.Key.Value is not (Key or "endurance"))] };
        return document with { Root = Merged(document.Root, changes, MergedLevels, "the scenario", kind, diagnostics) };
    }

    private static ImmutableArray<MappingEntry> Layouts(ScenarioDocument document) =>
        document.Root.Find(Key)?.Value is MappingNode layouts ? layouts.Entries : [];

    private static MappingNode Merged(MappingNode drawn, MappingNode overlay, int levels, string owner, string kind, DiagnosticList diagnostics)
    {
        var entries = drawn.Entries.ToList();
        foreach (var change in overlay.Entries)
        {
            var name = change.Key.Value;
            var at = entries.FindIndex(entry => string.Equals(entry.Key.Value, name, StringComparison.Ordinal));
            if (change.Value is ScalarNode { IsNull: true } && at < 0)
                ReportMissing(drawn, change.Key, owner, kind, diagnostics);
            else if (change.Value is ScalarNode { IsNull: true })
                entries.RemoveAt(at);
            else if (at < 0)
                entries.Add(change);
            else if (levels > 0 && entries[at].Value is MappingNode below && change.Value is MappingNode above)
                entries[at] = new MappingEntry(change.Key, Merged(below, above, levels - 1, Quoted.Of(name), kind, diagnostics));
            else
                entries[at] = change;
        }

        return drawn with { Entries = [.. entries] };
    }

    private static void ReportMissing(MappingNode drawn, ScalarNode key, string owner, string kind, DiagnosticList diagnostics) => diagnostics.Error(
        "nothing-to-remove", key.Span, $"{owner} has no {Quoted.Of(key.Value)} that {kind} could remove",
        "a name that stands there, or {} for a new part without keys", NearestName.Find(key.Value, drawn.Entries.Select(entry => entry.Key.Value)));
}
