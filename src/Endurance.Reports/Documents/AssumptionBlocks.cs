using System.Collections.Immutable;
using Endurance.Findings;

namespace Endurance.Reports;

/// <summary>What an answer rests on, part by part.</summary>
internal static class AssumptionBlocks
{
    /// <summary>Each assumption once; nothing where there are none.</summary>
    public static ImmutableArray<ReportBlock> Of(ImmutableArray<Assumption> assumptions)
    {
        if (assumptions.IsEmpty)
            return [];
        var rows = assumptions
            .Distinct()
            .GroupBy(assumption => assumption.Part, StringComparer.Ordinal)
            .SelectMany(part => part.Select((assumption, i) => Row(assumption, i == 0)))
            .ToImmutableArray();
        return
        [
            new ReportHeading("Assumptions"),
            new ReportTable("What the answer rests on that was not measured", [new("part"), new("assumed"), new("origin"), new("source")], rows),
        ];
    }

    private static ImmutableArray<ReportCell> Row(Assumption assumption, bool isFirstOfPart) =>
        [isFirstOfPart ? assumption.Part : "", assumption.Text, Wording.Of(assumption.Origin), assumption.Source ?? CellText.Absent];
}
