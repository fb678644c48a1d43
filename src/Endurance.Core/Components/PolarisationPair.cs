using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>A resistance with a capacitance across it, in series with the battery: a voltage that lags the current.</summary>
/// <param name="Resistance">Settled volts per ampere; above zero.</param>
/// <param name="Time">Time constant; at least one second.</param>
public sealed record PolarisationPair(Resistance Resistance, Duration Time);
