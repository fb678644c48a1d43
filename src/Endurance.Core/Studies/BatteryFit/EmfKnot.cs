namespace Endurance.Studies.BatteryFit;

/// <summary>A row of a fitted EMF table.</summary>
/// <param name="Charge">0 to 1.</param>
/// <param name="Volts">EMF there; the standard error of the lowest row is absent, since it defines where charge 0 is.</param>
public sealed record EmfKnot(double Charge, FittedValue Volts);
