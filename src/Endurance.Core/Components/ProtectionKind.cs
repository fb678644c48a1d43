namespace Endurance.Components;

/// <summary>What opens on too much current.</summary>
public enum ProtectionKind
{
    /// <summary>Can be reset and pulled by hand.</summary>
    Breaker,

    /// <summary>Opens once.</summary>
    Fuse,

    /// <summary>A short length of thinner wire that melts.</summary>
    FusibleLink,
}
