namespace Endurance.Studies.GroundTest;

/// <summary>One number to measure at a test point.</summary>
/// <param name="Part">Name of the bus, feed, battery or load.</param>
/// <param name="Kind">What of it.</param>
/// <param name="Predicted">Volts or amperes.</param>
/// <param name="Tolerance">Either way, in the same unit; above zero.</param>
public sealed record ExpectedReading(string Part, ReadingKind Kind, double Predicted, double Tolerance)
{
    public string Unit => Kind == ReadingKind.BusVolts ? "V" : "A";
}
