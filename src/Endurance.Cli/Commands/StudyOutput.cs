using System.Collections.Immutable;
using Endurance.Reports;
using Endurance.Reports.Plots;

namespace Endurance.Cli.Commands;

/// <summary>A study's result in every form; only what is asked for is made.</summary>
internal sealed record StudyOutput
{
    public required Func<string> Json { get; init; }

    public required Func<string> Csv { get; init; }

    public required Func<ReportDocument> Document { get; init; }

    /// <summary>Without those that have nothing to show.</summary>
    public required Func<ImmutableArray<(string FileStem, PlotDescription? Plot)>> Plots { get; init; }

    public required bool IsMet { get; init; }
}
