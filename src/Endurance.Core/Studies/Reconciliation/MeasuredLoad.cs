using Endurance.Components;
using Endurance.Studies.GroundTest;

namespace Endurance.Studies.Reconciliation;

/// <summary>A load with the draw that was measured.</summary>
/// <param name="Drawn">As the scenario has it.</param>
/// <param name="Measured">The same with the measured draw, of the same kind; rounded so that text of five decimals says it exactly.</param>
/// <param name="Amperes">Current at the point.</param>
/// <param name="Predicted">Current that the scenario predicts there.</param>
/// <param name="Point">Number of the test point.</param>
public sealed record MeasuredLoad(Load Drawn, Load Measured, double Amperes, double Predicted, int Point)
{
    public bool IsWithinTolerance => Math.Abs(Amperes - Predicted) <= Tolerances.Amperes(Predicted);

    /// <summary>The reading is the prediction, to the last digit of the card.</summary>
    public bool IsAsDrawn => Equals(Drawn.Demand, Measured.Demand);
}
