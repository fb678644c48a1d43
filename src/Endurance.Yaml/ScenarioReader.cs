using Endurance.Yaml.Binding;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;

namespace Endurance.Yaml;

/// <summary>Reads scenario files; every fault is a diagnostic, never an exception.</summary>
public static class ScenarioReader
{
    /// <param name="path">A UTF-8 file of at most 1 MiB.</param>
    /// <param name="layout">Name of the layout to lay over the scenario; <see langword="null"/>: as drawn.</param>
    public static ScenarioReadResult ReadFile(string path, string? layout = null)
    {
        var diagnostics = new DiagnosticList(path);
        return FileText.Read(path, diagnostics) is { } text ? ReadText(path, text, layout) : new ScenarioReadResult(null, diagnostics.InOrder());
    }

    /// <param name="name">How diagnostics name the file.</param>
    /// <param name="bytes">The whole file, UTF-8 of at most 1 MiB.</param>
    /// <param name="layout">Name of the layout to lay over the scenario; <see langword="null"/>: as drawn.</param>
    public static ScenarioReadResult ReadBytes(string name, byte[] bytes, string? layout = null)
    {
        var diagnostics = new DiagnosticList(name);
        return FileText.Of(bytes, diagnostics) is { } text ? ReadText(name, text, layout) : new ScenarioReadResult(null, diagnostics.InOrder());
    }

    /// <param name="name">How diagnostics name the text.</param>
    /// <param name="text">The whole scenario.</param>
    /// <param name="layout">Name of the layout to lay over the scenario; <see langword="null"/>: as drawn.</param>
    public static ScenarioReadResult ReadText(string name, string text, string? layout = null)
    {
        var drawn = Read(name, text, null);
        if (layout is null)
            return drawn;
        var laid = Read(name, text, layout);
        if (!laid.Layouts.Contains(layout))
            return laid;
        return laid with { Diagnostics = [.. laid.Diagnostics.Select(told => drawn.Diagnostics.Contains(told) ? told : told with { Layout = layout })] };
    }

    private static ScenarioReadResult Read(string name, string text, string? layout)
    {
        var source = new SourceText(name, text.StartsWith('\uFEFF') ? text[1..] : text);
        var diagnostics = new DiagnosticList(name) { Source = source };
        if (!TextGuards.Accepts(source, diagnostics) || DocumentParser.Parse(source, diagnostics) is not { } document)
            return new ScenarioReadResult(null, diagnostics.InOrder());
        var names = LayoutOverlay.Names(document);
        var laid = layout is null ? document : LayoutOverlay.Apply(document, layout, diagnostics);
        var scenario = laid is null ? null : ScenarioBinder.Bind(laid, diagnostics);
        if (scenario is not null && Equals(laid!.Root.Find("title"), document.Root.Find("title")) && layout is not null)
            scenario = scenario with { Title = $"{scenario.Title}, layout {layout}" };
        return new ScenarioReadResult(diagnostics.HasErrors ? null : scenario, diagnostics.InOrder()) { Layouts = names };
    }
}
