namespace Endurance.Scenarios;

/// <summary>How far one quantity may be from what the scenario says.</summary>
/// <param name="Quantity">Path of the quantity, such as <c>ship_battery.health</c>.</param>
/// <param name="Distribution">Its values.</param>
public sealed record Tolerance(string Quantity, Distribution Distribution);
