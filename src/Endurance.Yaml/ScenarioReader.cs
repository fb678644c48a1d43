using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Yaml.Binding;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;

namespace Endurance.Yaml;

/// <summary>Reads scenario files; every fault is a diagnostic, never an exception.</summary>
public static class ScenarioReader
{
    /// <param name="path">A UTF-8 file of at most 1 MiB.</param>
    /// <param name="layout">Name of the layout to lay over the scenario; <see langword="null"/>: as drawn.</param>
    /// <param name="overlays">Files to lay over it after the layout, in order.</param>
    public static ScenarioReadResult ReadFile(string path, string? layout = null, IReadOnlyList<string>? overlays = null)
    {
        string[] paths = [path, .. overlays ?? []];
        var diagnostics = paths.Select(read => new DiagnosticList(read)).ToList();
        var texts = paths.Select((read, i) => FileText.Read(read, diagnostics[i], i == 0 ? "a scenario file" : "an overlay, a YAML file")).ToList();
        if (texts.Contains(null))
            return new ScenarioReadResult(null, [.. diagnostics.SelectMany(list => list.InOrder())]);
        return ReadText(path, texts[0]!, layout, [.. paths.Zip(texts).Skip(1).Select(pair => new OverlayText(pair.First, pair.Second!))]);
    }

    /// <param name="name">How diagnostics name the file.</param>
    /// <param name="bytes">The whole file, UTF-8 of at most 1 MiB.</param>
    /// <param name="layout">Name of the layout to lay over the scenario; <see langword="null"/>: as drawn.</param>
    /// <param name="overlays">Laid over it after the layout, in order.</param>
    public static ScenarioReadResult ReadBytes(string name, byte[] bytes, string? layout = null, IReadOnlyList<OverlayText>? overlays = null)
    {
        var diagnostics = new DiagnosticList(name);
        return FileText.Of(bytes, diagnostics) is { } text ? ReadText(name, text, layout, overlays) : new ScenarioReadResult(null, diagnostics.InOrder());
    }

    /// <param name="name">How diagnostics name the text.</param>
    /// <param name="text">The whole scenario.</param>
    /// <param name="layout">Name of the layout to lay over the scenario; <see langword="null"/>: as drawn.</param>
    /// <param name="overlays">Laid over it after the layout, in order.</param>
    public static ScenarioReadResult ReadText(string name, string text, string? layout = null, IReadOnlyList<OverlayText>? overlays = null)
    {
        var drawn = Read(name, text, null, overlays ?? []);
        if (layout is null)
            return drawn;
        var laid = Read(name, text, layout, overlays ?? []);
        if (!laid.Layouts.Contains(layout))
            return laid;
        return laid with { Diagnostics = [.. laid.Diagnostics.Select(told => drawn.Diagnostics.Contains(told) ? told : told with { Layout = layout })] };
    }

    private static ScenarioReadResult Read(string name, string text, string? layout, IReadOnlyList<OverlayText> overlays)
    {
        var source = new SourceText(name, WithoutMark(text));
        ImmutableArray<SourceText> above = [.. overlays.Select((overlay, i) => new SourceText(overlay.Name, WithoutMark(overlay.Text), i + 1))];
        var diagnostics = new DiagnosticList(name) { Source = source, Overlays = above };
        var document = Parse(source, diagnostics);
        var changes = above.Select(overlay => Parse(overlay, diagnostics)).OfType<ScenarioDocument>().ToList();
        if (document is null || changes.Count < above.Length)
            return new ScenarioReadResult(null, diagnostics.InOrder());
        var laid = layout is null ? document : LayoutOverlay.Apply(document, layout, diagnostics);
        laid = changes.Aggregate(laid, (under, change) => under is null ? null : LayoutOverlay.Lay(under, change, diagnostics));
        var scenario = laid is null ? null : ScenarioBinder.Bind(laid, diagnostics);
        if (scenario is not null && Equals(laid!.Root.Find("title"), document.Root.Find("title")))
            scenario = scenario with { Title = Title(scenario, layout, above) };
        return new ScenarioReadResult(diagnostics.HasErrors ? null : scenario, diagnostics.InOrder()) { Layouts = LayoutOverlay.Names(document) };
    }

    private static ScenarioDocument? Parse(SourceText source, DiagnosticList diagnostics) =>
        TextGuards.Accepts(source, diagnostics) ? DocumentParser.Parse(source, diagnostics) : null;

    /// <summary>A report must not pass for that of the scenario as drawn.</summary>
    private static string Title(Scenario scenario, string? layout, ImmutableArray<SourceText> overlays) => string.Concat([
        scenario.Title,
        layout is null ? "" : $", layout {layout}",
        .. overlays.Select(overlay => $", with {Path.GetFileName(overlay.Name)}"),
    ]);

    private static string WithoutMark(string text) => text.StartsWith('\uFEFF') ? text[1..] : text;
}
