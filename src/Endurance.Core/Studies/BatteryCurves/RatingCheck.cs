using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Studies.BatteryCurves;

/// <summary>What a new, warm battery would still hold when a rating's own current has reached the rating's end voltage.</summary>
/// <param name="Rating">The rating.</param>
/// <param name="EndVoltage">As stated, else the usual one of the battery's kind.</param>
/// <param name="IsEndStated">Whether the end voltage was stated with the rating.</param>
/// <param name="ChargeLeft">0 when the voltage is never reached; what is left is counted twice, once in the exponent and once as I R drop.</param>
public sealed record RatingCheck(Rating Rating, Voltage EndVoltage, bool IsEndStated, double ChargeLeft)
{
    /// <summary>Charge left above which the drop that counts twice costs minutes worth a warning.</summary>
    public const double MostLeft = 0.05;
}
