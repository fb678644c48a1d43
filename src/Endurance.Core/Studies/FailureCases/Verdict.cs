namespace Endurance.Studies.FailureCases;

/// <summary>Whether what was required is met.</summary>
public enum Verdict
{
    /// <summary>Nothing was required.</summary>
    None,
    Pass,
    Fail,
}
