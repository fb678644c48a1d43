namespace Endurance.Scenarios;

/// <summary>What a step does to its target.</summary>
public enum ActionVerb
{
    /// <summary>An alternator, charger or battery gives nothing from now on; a warning stays dark.</summary>
    Fail,

    /// <summary>Undoes fail, short and break.</summary>
    Restore,

    /// <summary>An engine stops turning its alternators.</summary>
    Stop,

    /// <summary>An engine turns its alternators again.</summary>
    Start,

    /// <summary>A contactor, switch or breaker of a feed opens.</summary>
    Open,

    /// <summary>A contactor, switch or breaker of a feed closes.</summary>
    Close,

    /// <summary>A load, alternator or charger is switched off.</summary>
    Shed,

    /// <summary>A load, alternator or charger is switched on.</summary>
    Connect,

    /// <summary>The diode of a feed fails short.</summary>
    Short,

    /// <summary>A feed is interrupted until restored.</summary>
    Break,

    /// <summary>One more cell of a battery shorts.</summary>
    ShortCell,

    /// <summary>A selector is turned to a position.</summary>
    Select,

    /// <summary>An engine runs at idle.</summary>
    Idle,

    /// <summary>An engine runs at cruise again.</summary>
    Cruise,
}
