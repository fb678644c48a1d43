using Endurance.Studies.Sizing;

namespace Endurance.Reports.Html;

/// <summary>One thing varied until a requirement fails.</summary>
/// <param name="Find">What is varied.</param>
/// <param name="Subject">Name of the battery; empty where it is about none.</param>
/// <param name="Now">As the scenario has it, in the SI unit of what is varied.</param>
/// <param name="Result">What was found.</param>
public sealed record SizingMargin(SizingFind Find, string Subject, double Now, LimitResult Result);
