namespace Endurance.Studies.Sizing;

/// <summary>What the edge of is looked for.</summary>
public enum SizingFind
{
    /// <summary>Smallest rated capacity of a battery, in coulombs.</summary>
    Capacity,

    /// <summary>Most amperes of a further load on a bus.</summary>
    Load,

    /// <summary>Most seconds by which everything the pilot does may come later.</summary>
    Delay,

    /// <summary>Most seconds by which every shedding may come later.</summary>
    ShedTime,

    /// <summary>Lowest health of a battery, as a fraction.</summary>
    Health,
}
