using Endurance.Studies.Sizing;

namespace Endurance.Reports.Html;

/// <summary>One thing varied until a requirement fails.</summary>
/// <param name="Subject">What is varied, in words.</param>
/// <param name="Unit">Of the numbers shown.</param>
/// <param name="Scale">From the SI unit of the result to <paramref name="Unit"/>.</param>
/// <param name="Now">As the scenario has it, in <paramref name="Unit"/>.</param>
/// <param name="Result">In SI units.</param>
public sealed record SizingMargin(string Subject, string Unit, double Scale, double Now, LimitResult Result);
