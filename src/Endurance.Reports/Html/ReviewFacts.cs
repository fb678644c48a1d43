using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Studies.BatteryCurves;
using Endurance.Studies.FailureCases;
using Endurance.Studies.LayoutComparison;
using Endurance.Studies.LoadAnalysis;
using Endurance.Studies.SingleFailures;
using Endurance.Studies.Wiring;

namespace Endurance.Reports.Html;

/// <summary>Everything that a reviewer is shown.</summary>
public sealed record ReviewFacts
{
    public required Scenario Scenario { get; init; }

    /// <summary>The scenario.</summary>
    public required ReviewFile File { get; init; }

    /// <summary>Laid over it, in order.</summary>
    public ImmutableArray<ReviewFile> Overlays { get; init; } = [];

    /// <summary>Of the program.</summary>
    public required string Version { get; init; }

    /// <summary>Day of the report, as the user gave it; <see langword="null"/>: not given.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>With traces.</summary>
    public required ImmutableArray<CaseResult> Cases { get; init; }

    public required LoadAnalysisResult Loads { get; init; }

    public required WiringResult Wiring { get; init; }

    public required ImmutableArray<FailureRow> SingleFailures { get; init; }

    /// <summary>One a battery.</summary>
    public required ImmutableArray<BatteryCurve> Batteries { get; init; }

    /// <summary>As drawn and each layout of the file; empty when it has none.</summary>
    public ImmutableArray<LayoutResult> Layouts { get; init; } = [];

    /// <summary>How far each thing may slip before a requirement fails; empty without requirements.</summary>
    public ImmutableArray<SizingMargin> Margins { get; init; } = [];
}
