namespace Endurance.Simulation;

/// <summary>Which current law a branch follows.</summary>
internal enum BranchKind
{
    /// <summary>A resistance, or a load of constant resistance.</summary>
    Conductance,

    /// <summary>A junction diode with all resistances of its feed.</summary>
    Junction,

    /// <summary>An ideal-diode controller with the conductors of its feed.</summary>
    IdealDiode,

    /// <summary>From the airframe to a battery's bus.</summary>
    Battery,

    /// <summary>From the airframe to an alternator's bus.</summary>
    Alternator,

    /// <summary>From the airframe to the bus that a charger feeds.</summary>
    ChargerOutput,

    /// <summary>From the bus that feeds a charger to the airframe.</summary>
    ChargerInput,

    /// <summary>Loads of constant power.</summary>
    Power,

    /// <summary>Loads of constant current.</summary>
    Current,
}
