namespace Endurance.Simulation;

/// <summary>A case could not be computed to its end, where only its end would have been an answer.</summary>
/// <param name="breakOff">Why, and when.</param>
/// <param name="failureCase">Name of the failure case that was run.</param>
public sealed class BrokenOffException(BreakOff breakOff, string failureCase = "") : Exception(breakOff.Told(failureCase.Length > 0 ? $"case {failureCase}" : ""))
{
    public BreakOff BreakOff { get; } = breakOff;
}
