namespace Endurance.Findings;

/// <summary>How much a finding matters to the person who reads it; the order is the order of weight.</summary>
public enum Severity
{
    /// <summary>Worth knowing; nothing to do.</summary>
    Information,

    /// <summary>The answer holds, with a reservation.</summary>
    Caution,

    /// <summary>Probably a mistake in the aircraft or in the scenario.</summary>
    Warning,

    /// <summary>The scenario cannot be used as it stands.</summary>
    Error,
}
