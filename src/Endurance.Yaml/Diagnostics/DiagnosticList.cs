using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Yaml.Documents;

namespace Endurance.Yaml.Diagnostics;

/// <summary>Collects the diagnostics of one reading.</summary>
internal sealed class DiagnosticList(string file)
{
    private const int Most = 200;

    private readonly List<Diagnostic> _diagnostics = [];

    /// <summary>Text that places refer to; set once it is known.</summary>
    public SourceText? Source { get; set; }

    public int ErrorCount => _diagnostics.Count(diagnostic => diagnostic.Severity == Severity.Error);

    public bool HasErrors => ErrorCount > 0;

    public void Error(string code, SourceSpan span, string message, string? expected, string? nearest = null) =>
        Add(Severity.Error, code, span, message, expected, nearest);

    public void Add(Severity severity, string code, SourceSpan span, string message, string? expected, string? nearest = null) => _diagnostics.Add(new Diagnostic
    {
        Code = code,
        Severity = severity,
        File = file,
        Line = span.Line,
        Column = span.Column,
        Length = Math.Max(1, span.Length),
        SourceLine = Source?.Line(span.Line) ?? "",
        Message = message,
        Expected = expected,
        Nearest = nearest,
    });

    /// <summary>Whether an error already stands at this place.</summary>
    public bool HasErrorAt(SourceSpan span) =>
        _diagnostics.Exists(diagnostic => diagnostic.Severity == Severity.Error && diagnostic.Line == span.Line && diagnostic.Column == span.Column);

    /// <summary>In order of line and column; a flood is cut off with a last word on how many there were.</summary>
    public ImmutableArray<Diagnostic> InOrder()
    {
        var ordered = _diagnostics.OrderBy(diagnostic => diagnostic.Line).ThenBy(diagnostic => diagnostic.Column).ToImmutableArray();
        if (ordered.Length <= Most)
            return ordered;
        var kept = ordered[..Most];
        var last = new Diagnostic
        {
            Code = "too-many-diagnostics",
            Severity = HasErrors ? Severity.Error : Severity.Warning,
            File = file,
            Line = kept[^1].Line,
            Column = kept[^1].Column,
            Message = $"{ordered.Length - Most} more are not shown",
        };
        return kept.Add(last);
    }
}
