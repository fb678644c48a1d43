using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Studies.Adjustment;
using Endurance.Studies.FailureCases;
using Endurance.Studies.Sweeps;

namespace Endurance.Reports;

/// <summary>A sweep of one quantity.</summary>
/// <param name="Scenario">What was swept.</param>
/// <param name="Quantity">What was varied.</param>
/// <param name="Points">In the order of the sweep.</param>
public sealed record SweepResult(Scenario Scenario, AdjustableQuantity Quantity, ImmutableArray<SweepPoint> Points)
{
    /// <summary>Every requirement is met at every value.</summary>
    public bool IsMetByAll => Points.All(point => point.Cases.All(one => one.Verdict != Verdict.Fail));

    internal string Number(SweepPoint point) => QuantityText.Number(Quantity.Kind, point.Value);

    internal string Unit => QuantityText.Unit(Quantity.Kind);
}
