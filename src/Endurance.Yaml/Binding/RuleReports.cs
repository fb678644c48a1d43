using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;
using static System.FormattableString;

namespace Endurance.Yaml.Binding;

/// <summary>Turns findings of the rules into diagnostics at their places.</summary>
internal static class RuleReports
{
    public static void Report(ImmutableArray<RuleFinding> findings, ScenarioDocument document, DiagnosticList diagnostics)
    {
        foreach (var (finding, expected, nearest) in findings)
        {
            // What follows from a value that was already refused says nothing new.
            var isConverterTwice = finding.Code is "duplicate-name" && string.Equals(finding.Part, finding.Value, StringComparison.Ordinal);
            var place = isConverterTwice ? document.PlaceOf("converters" + finding.Part["chargers".Length..]) : PlaceOf(document, finding.Part, finding.Value);
            if (diagnostics.HasErrors && finding.Code is "no-failure-cases" or "step-does-nothing")
                continue;
            if (diagnostics.HasErrorAt(place) || finding.Value.Contains(MappingReader.NoName, StringComparison.Ordinal))
                continue;
            var severity = finding.Severity == Severity.Error ? Severity.Error : Severity.Warning;
            var message = string.Equals(finding.Code, "duplicate-name", StringComparison.Ordinal)
                ? Invariant($"{finding.Message} on line {PlaceOf(document, finding.Value).Line}")
                : finding.Message;
            diagnostics.Add(severity, finding.Code, place, Quoted.Printable(message), expected, nearest);
        }
    }

    /// <summary>A charger may be written as a converter.</summary>
    private static SourceSpan PlaceOf(ScenarioDocument document, string path, string? named = null)
    {
        const string chargers = "chargers.";
        if (!path.StartsWith(chargers, StringComparison.Ordinal) || document.Root.Find("converters")?.Value is not MappingNode converters)
            return document.PlaceOf(path, named);
        var name = path[chargers.Length..].Split('.')[0];
        var isCharger = (document.Root.Find("chargers")?.Value as MappingNode)?.Find(name) is not null;
        return document.PlaceOf(isCharger || converters.Find(name) is null ? path : "converters." + path[chargers.Length..], named);
    }
}
