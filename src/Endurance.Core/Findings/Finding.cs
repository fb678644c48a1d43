namespace Endurance.Findings;

/// <summary>One thing a study or a rule noticed.</summary>
/// <param name="Code">Stable identifier in kebab-case, such as <c>step-never-fired</c>.</param>
/// <param name="Severity">Weight of the finding.</param>
/// <param name="Part">Path of what it is about inside the scenario, parts joined by dots (<c>batteries.ship_battery.emf</c>), or the name of a part.</param>
/// <param name="Value">The number or text that shows it, with its unit; empty when there is none.</param>
/// <param name="Message">A sentence for the user: what is so, and what to do.</param>
public sealed record Finding(string Code, Severity Severity, string Part, string Value, string Message);
