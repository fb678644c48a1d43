namespace Endurance.Studies.Sweeps;

/// <summary>What one tolerance alone does.</summary>
/// <param name="Quantity">Path of the quantity.</param>
/// <param name="Low">All cases at its 5 % point.</param>
/// <param name="High">All cases at its 95 % point.</param>
public sealed record SensitivityRow(string Quantity, SweepPoint Low, SweepPoint High);
