using System.Collections.Immutable;
using Endurance.Reports.Diagram;
using Endurance.Scenarios;
using static Endurance.Reports.StudyBlocks;

namespace Endurance.Reports.Html;

/// <summary>The feed diagram in words.</summary>
internal static class FeedBlocks
{
    public static ImmutableArray<ReportBlock> Of(Scenario scenario)
    {
        var rows = DiagramContent.Rows(scenario);
        var branches = DiagramContent.Branches(scenario, rows);
        return
        [
            .. Table("Sources", "on bus", branches.Where(branch => branch.To is null).Select(branch => Row(branch.Name, rows[branch.From].Name, Series(branch)))),
            .. Feeds(rows, branches.Where(branch => branch.To is not null)),
        ];
    }

    private static ImmutableArray<ReportBlock> Table(string title, string bus, IEnumerable<ImmutableArray<ReportCell>> rows) =>
        rows.ToImmutableArray() is { IsEmpty: false } all ? [new ReportTable(title, [new("name"), new(bus), new("rating")], all)] : [];

    private static ImmutableArray<ReportBlock> Feeds(ImmutableArray<DiagramRow> rows, IEnumerable<DiagramBranch> branches) =>
        branches.Select(branch => Row(branch.Name, rows[branch.From].Name, rows[branch.To!.Value].Name, Series(branch))).ToImmutableArray() is { IsEmpty: false } all
            ? [new ReportTable("Feeds and chargers", [new("name"), new("from"), new("to"), new("in series")], all)]
            : [];

    private static string Series(DiagramBranch branch) => branch.Parts.IsEmpty
        ? "conductor alone"
        : string.Join(", ", branch.Parts.Select(part => part.Symbol switch
        {
            DiagramSymbol.Diode when !part.Label.Contains("diode", StringComparison.Ordinal) => $"diode {part.Label}",
            DiagramSymbol.Contact when part.Label.Contains(':', StringComparison.Ordinal) => $"selector {part.Label} ({(part.IsClosed ? "closed" : "open")})",
            _ => part.Label,
        }));
}
