using Endurance.Quantities;

namespace Endurance.Studies.LoadAnalysis;

/// <summary>What is drawn in one phase of flight, on one bus or in all.</summary>
/// <param name="Bus"><see langword="null"/>: all buses together, at the system's voltage: what is behind a converter counts with what the converter takes.</param>
/// <param name="Phase"><see langword="null"/>: what is on in every phase.</param>
/// <param name="Continuous">Sum of the continuous loads.</param>
/// <param name="Intermittent">Sum of the means of those that come and go.</param>
/// <param name="Peak">Everything at its peak at once.</param>
public sealed record LoadTotal(string? Bus, string? Phase, Current Continuous, Current Intermittent, Current Peak)
{
    public Current Mean => Continuous + Intermittent;
}
