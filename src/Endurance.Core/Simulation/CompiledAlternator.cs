namespace Endurance.Simulation;

/// <summary>An alternator as numbers in SI units.</summary>
/// <param name="Name">Name of the part.</param>
/// <param name="Node">Its bus.</param>
/// <param name="Setpoint">Volts.</param>
/// <param name="Droop">Ohms.</param>
/// <param name="Limit">Amperes at cruise.</param>
/// <param name="LimitIdle">Amperes at idle.</param>
/// <param name="Engine">Index into the scenario's engines; -1 when always turned.</param>
/// <param name="TripsAbove">Volts; positive infinity without an over-voltage relay.</param>
/// <param name="FieldNode">Node that excites it; -1 when its field is not modelled.</param>
internal sealed record CompiledAlternator(
    string Name, int Node, double Setpoint, double Droop, double Limit, double LimitIdle, int Engine, double TripsAbove, int FieldNode);
