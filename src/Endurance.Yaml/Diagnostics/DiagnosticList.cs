using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Yaml.Documents;
using static System.FormattableString;

namespace Endurance.Yaml.Diagnostics;

/// <summary>Collects the diagnostics of one reading.</summary>
internal sealed class DiagnosticList(string file)
{
    private const int Most = 200;

    private readonly List<(Diagnostic Told, int Source)> _diagnostics = [];

    /// <summary>Text that places refer to; set once it is known.</summary>
    public SourceText? Source { get; set; }

    /// <summary>Texts that places with a <see cref="SourceSpan.Source"/> of 1, 2, ... refer to.</summary>
    public ImmutableArray<SourceText> Overlays { get; init; } = [];

    public int ErrorCount => _diagnostics.Count(entry => entry.Told.Severity == Severity.Error);

    public bool HasErrors => ErrorCount > 0;

    public void Error(string code, SourceSpan span, string message, string? expected, string? nearest = null) =>
        Add(Severity.Error, code, span, message, expected, nearest);

    public void Add(Severity severity, string code, SourceSpan span, string message, string? expected, string? nearest = null)
    {
        var source = span.Source == 0 ? Source : Overlays[span.Source - 1];
        _diagnostics.Add((
            new Diagnostic
            {
                Code = code,
                Severity = severity,
                File = span.Source == 0 ? file : source!.Name,
                Line = span.Line,
                Column = span.Column,
                Length = Math.Max(1, span.Length),
                SourceLine = source?.Line(span.Line) ?? "",
                Message = message,
                Expected = expected,
                Nearest = nearest,
            },
            span.Source));
    }

    /// <summary>Whether an error already stands at this place, or at a part of it such as a unit.</summary>
    public bool HasErrorAt(SourceSpan span) =>
        _diagnostics.Exists(entry =>
            entry.Told.Severity == Severity.Error && entry.Source == span.Source && entry.Told.Line == span.Line
            && entry.Told.Column >= span.Column && entry.Told.Column < span.Column + span.Length);

    /// <summary>The scenario first, then its overlays, each in order of line and column; a flood is cut off with a last word on how many there were.</summary>
    public ImmutableArray<Diagnostic> InOrder()
    {
        var ordered = _diagnostics.OrderBy(entry => entry.Source).ThenBy(entry => entry.Told.Line).ThenBy(entry => entry.Told.Column).Select(entry => entry.Told).ToImmutableArray();
        if (ordered.Length <= Most)
            return ordered;
        var kept = ordered[..Most];
        var last = new Diagnostic
        {
            Code = "too-many-diagnostics",
            Severity = HasErrors ? Severity.Error : Severity.Warning,
            File = kept[^1].File,
            Line = kept[^1].Line,
            Column = kept[^1].Column,
            Message = Invariant($"{ordered.Length - Most} more are not shown"),
        };
        return kept.Add(last);
    }
}
