namespace Endurance.Simulation;

/// <summary>A charger or converter as numbers in SI units.</summary>
/// <param name="Name">Name of the part.</param>
/// <param name="From">Node of its input.</param>
/// <param name="To">Node of its output.</param>
/// <param name="Output">Volts at no load.</param>
/// <param name="Droop">Ohms.</param>
/// <param name="Limit">Output amperes.</param>
/// <param name="Efficiency">Above 0, at most 1.</param>
/// <param name="CutIn">Input volts above which it starts; negative infinity when it always runs.</param>
/// <param name="CutOut">Input volts below which it stops; negative infinity when it never does.</param>
internal sealed record CompiledCharger(
    string Name, int From, int To, double Output, double Droop, double Limit, double Efficiency, double CutIn, double CutOut);
