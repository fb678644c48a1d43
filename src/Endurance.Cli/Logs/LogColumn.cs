namespace Endurance.Cli.Logs;

/// <summary>Where a signal stands.</summary>
/// <param name="Signal">What it is.</param>
/// <param name="Index">From zero.</param>
/// <param name="Factor">Of the unit the heading names; <see langword="null"/>: none.</param>
internal sealed record LogColumn(LogSignal Signal, int Index, double? Factor);
