namespace Endurance.Fuzz;

/// <summary>A law of the oracle does not hold; the message says which.</summary>
public sealed class FuzzException(string message) : Exception(message);
