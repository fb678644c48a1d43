namespace Endurance.Simulation;

/// <summary>An alternator as numbers in SI units.</summary>
/// <param name="Name">Name of the part.</param>
/// <param name="Node">Its bus.</param>
/// <param name="Setpoint">Volts.</param>
/// <param name="Droop">Ohms.</param>
/// <param name="Limit">Amperes.</param>
/// <param name="Engine">Index into the scenario's engines; -1 when always turned.</param>
internal sealed record CompiledAlternator(string Name, int Node, double Setpoint, double Droop, double Limit, int Engine);
