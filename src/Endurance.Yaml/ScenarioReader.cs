using Endurance.Yaml.Binding;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;

namespace Endurance.Yaml;

/// <summary>Reads scenario files; every fault is a diagnostic, never an exception.</summary>
public static class ScenarioReader
{
    /// <param name="path">A UTF-8 file of at most 1 MiB.</param>
    public static ScenarioReadResult ReadFile(string path)
    {
        var diagnostics = new DiagnosticList(path);
        return FileText.Read(path, diagnostics) is { } text ? Read(path, text, diagnostics) : new ScenarioReadResult(null, diagnostics.InOrder());
    }

    /// <param name="name">How diagnostics name the text.</param>
    /// <param name="text">The whole scenario.</param>
    public static ScenarioReadResult ReadText(string name, string text) => Read(name, text, new DiagnosticList(name));

    private static ScenarioReadResult Read(string name, string text, DiagnosticList diagnostics)
    {
        var source = new SourceText(name, text.StartsWith('\uFEFF') ? text[1..] : text);
        diagnostics.Source = source;
        if (!TextGuards.Accepts(source, diagnostics) || DocumentParser.Parse(source, diagnostics) is not { } document)
            return new ScenarioReadResult(null, diagnostics.InOrder());
        var scenario = ScenarioBinder.Bind(document, diagnostics);
        return new ScenarioReadResult(diagnostics.HasErrors ? null : scenario, diagnostics.InOrder());
    }
}
