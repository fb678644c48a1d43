namespace Endurance.Studies.LoadAnalysis;

/// <summary>What draws.</summary>
public enum LoadItemKind
{
    Load,

    /// <summary>The coil of a feed's contactor.</summary>
    Coil,

    /// <summary>The field of an alternator.</summary>
    Field,
}
