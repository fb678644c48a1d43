using System.Collections.Immutable;
using System.Text;
using Endurance.Findings;
using Endurance.Scenarios;
using Endurance.Studies.LayoutComparison;
using Endurance.Yaml;

namespace Endurance.Cli.Commands;

/// <summary>A scenario file read for the page for a reviewer, its layouts with it.</summary>
/// <param name="Path">Where the file is.</param>
/// <param name="Bytes">What it held.</param>
internal sealed record ReportSource(string Path, byte[] Bytes)
{
    private const string AsDrawn = "as drawn";

    /// <summary>Files of changes laid over it, in order.</summary>
    public ImmutableArray<(string Path, byte[] Bytes)> Overlays { get; private init; } = [];

    /// <summary>As drawn; <see langword="null"/> when the file, or a layout of it, cannot be run.</summary>
    public Scenario? Scenario { get; private init; }

    /// <summary>As drawn, then each layout; empty when the file has none.</summary>
    public ImmutableArray<NamedLayout> Layouts { get; private init; } = [];

    /// <summary>What the reader has to say, each thing once.</summary>
    public ImmutableArray<Diagnostic> Diagnostics { get; private init; } = [];

    /// <summary>Why a faultless scenario cannot be run; <see langword="null"/> when it can.</summary>
    public string? Refusal { get; private init; }

    public static ReportSource Read(string path, byte[] bytes, ImmutableArray<(string Path, byte[] Bytes)> overlays)
    {
        OverlayText[] above = [.. overlays.Select(overlay => new OverlayText(overlay.Path, Encoding.UTF8.GetString(overlay.Bytes)))];
        var drawn = ScenarioReader.ReadBytes(path, bytes, overlays: above);
        var laid = drawn.Layouts.Select(name => (Name: name, Read: ScenarioReader.ReadBytes(path, bytes, name, above))).ToArray();
        ImmutableArray<Diagnostic> diagnostics = [.. drawn.Diagnostics, .. laid.SelectMany(layout => layout.Read.Diagnostics).Where(told => told.Layout is not null)];
        var source = new ReportSource(path, bytes) { Overlays = overlays, Diagnostics = diagnostics };
        if (drawn.Scenario is not { } scenario || diagnostics.Any(told => told.Severity == Severity.Error))
            return source;
        var layouts = laid.Select(layout => new NamedLayout(layout.Name, layout.Read.Scenario!)).ToImmutableArray();
        if (layouts.Select(layout => layout.Scenario).Prepend(scenario).Select(one => ScenarioFile.NothingToRun(path, one)).FirstOrDefault(text => text is not null) is { } nothing)
            return source with { Refusal = nothing };
        return source with { Scenario = scenario, Layouts = layouts.IsEmpty ? [] : layouts.Insert(0, new NamedLayout(AsDrawn, scenario)) };
    }
}
