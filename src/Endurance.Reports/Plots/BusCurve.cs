using Endurance.Scenarios;
using Endurance.Studies.FailureCases;

namespace Endurance.Reports.Plots;

/// <summary>One bus in one run, to be drawn over others.</summary>
/// <param name="Name">For the key.</param>
/// <param name="Scenario">What was run.</param>
/// <param name="Result">Has no curve without a trace.</param>
/// <param name="Bus">Name of the bus.</param>
internal sealed record BusCurve(string Name, Scenario Scenario, CaseResult Result, string Bus);
