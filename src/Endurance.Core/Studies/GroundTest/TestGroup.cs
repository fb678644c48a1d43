namespace Endurance.Studies.GroundTest;

/// <summary>What a test point is about; in the order of the build-up.</summary>
public enum TestGroup
{
    /// <summary>Volts of a battery with nothing on it.</summary>
    RestVoltage,

    /// <summary>A feed or a load input carries current.</summary>
    Conducts,

    /// <summary>A diode lets nothing back.</summary>
    DiodeBlocks,

    /// <summary>A switch, contactor, breaker, fuse or selector interrupts.</summary>
    Opens,

    /// <summary>One load and no other.</summary>
    LoadAlone,

    /// <summary>Every load at once.</summary>
    AllLoads,

    /// <summary>One battery carries what it reaches.</summary>
    SourceAlone,

    /// <summary>A low-voltage warning comes on.</summary>
    Warning,

    /// <summary>Everything that some case sheds is off.</summary>
    ShedList,

    /// <summary>The steps of a failure case, one after the other.</summary>
    Transfer,

    /// <summary>The batteries run down under a watch.</summary>
    EnduranceRun,

    /// <summary>Alternators and chargers with the engine running.</summary>
    EngineRunning,
}
