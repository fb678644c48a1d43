namespace Endurance.Studies.Wiring;

/// <summary>Whether a wire does its job.</summary>
public enum WiringVerdict
{
    Pass,

    /// <summary>Not wrong by the tables, but a person has to look.</summary>
    Check,
    Fail,
}
