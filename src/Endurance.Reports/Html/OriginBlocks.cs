using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Findings;
using Endurance.Scenarios;

namespace Endurance.Reports.Html;

/// <summary>Where each number comes from: measured, given, the library or a default.</summary>
internal static class OriginBlocks
{
    public static ImmutableArray<ReportBlock> Of(ReviewFacts facts)
    {
        var assumptions = facts.Scenario.Assumptions
            .Concat(facts.Cases.SelectMany(result => result.Assumptions))
            .Concat(facts.Wiring.Assumptions)
            .Distinct()
            .ToImmutableArray();
        return
        [
            new ReportParagraph("Measured: taken on the aircraft or the bench. Given: typed in the scenario. Derived: computed from given values. Library: from the built-in reference data. Default: the scenario is silent, and the program stands in. Everything that neither table lists was given in the scenario, whose text stands at the end."),
            .. Assumed(assumptions),
            .. Draws(facts.Scenario),
        ];
    }

    private static ImmutableArray<ReportBlock> Assumed(ImmutableArray<Assumption> assumptions) => assumptions.IsEmpty
        ? [new ReportParagraph("Nothing was assumed.")]
        :
        [
            new ReportTable(
                "Assumptions",
                [new("part"), new("assumed"), new("origin"), new("source")],
                [.. assumptions.Select(one => ImmutableArray.Create<ReportCell>([one.Part, one.Text, Wording.Of(one.Origin), one.Source ?? CellText.Absent]))]),
        ];

    private static ImmutableArray<ReportBlock> Draws(Scenario scenario) => scenario.Loads.IsEmpty
        ? []
        :
        [
            new ReportTable(
                "Draw of each load",
                [new("load"), new("draw"), new("origin"), new("basis")],
                [.. scenario.Loads.Select(load => ImmutableArray.Create<ReportCell>(
                [
                    load.Name,
                    DemandText.Value(load.Demand),
                    load.Basis == LoadBasis.Measured ? Wording.Of(Origin.Measured) : Wording.Of(Origin.Given),
                    (load.Basis is { } basis ? Wording.Of(basis) : "not said") + (load.MeasuredOn is { } date ? " " + CellText.Date(date) : ""),
                ]))]),
        ];
}
