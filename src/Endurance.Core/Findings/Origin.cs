namespace Endurance.Findings;

/// <summary>Where a value came from.</summary>
public enum Origin
{
    /// <summary>Typed in the scenario.</summary>
    Given,

    /// <summary>A stated default, because the scenario is silent.</summary>
    Default,

    /// <summary>From the built-in reference data.</summary>
    Library,

    /// <summary>Computed from other given values.</summary>
    Derived,

    /// <summary>Measured on the aircraft or the bench.</summary>
    Measured,
}
