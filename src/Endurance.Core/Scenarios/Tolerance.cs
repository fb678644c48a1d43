namespace Endurance.Scenarios;

/// <summary>How far one quantity may be from what the scenario says.</summary>
/// <param name="Quantity">Path of the quantity, such as <c>ship_battery.health</c>.</param>
/// <param name="Distribution">Its values.</param>
/// <param name="Group">Tolerances of one group stand at the same quantile of their distributions, so all are low together and high together; <see langword="null"/>: independent of all others.</param>
public sealed record Tolerance(string Quantity, Distribution Distribution, string? Group = null)
{
    /// <summary>What is drawn once: the group, else the quantity alone.</summary>
    public string Source => Group ?? Quantity;
}
