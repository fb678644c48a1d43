using System.Globalization;

namespace Endurance.Simulation;

/// <summary>A case changes so fast, for so long, that it would take hours to compute: some value of the scenario is far out of proportion.</summary>
public sealed class StiffCaseException : Exception
{
    /// <param name="failureCase">Name of the failure case.</param>
    /// <param name="battery">The battery that moved most in the last step.</param>
    /// <param name="minutes">How far the case had come, from the timeline's zero.</param>
    /// <param name="steps">Steps that this took.</param>
    public StiffCaseException(string failureCase, string battery, double minutes, int steps)
        : base(string.Create(
            CultureInfo.InvariantCulture,
            $"case {failureCase}: after {steps} steps it has come to minute {minutes:G4} only. {battery} changes too fast to follow: a capacity or a resistance is far too small, or a polarisation far too large."))
    {
        Battery = battery;
    }

    /// <summary>Name of the battery.</summary>
    public string Battery { get; }
}
