namespace Endurance.Fuzz;

/// <summary>What became of one seed.</summary>
internal enum Verdict
{
    /// <summary>Simulated, and everything held.</summary>
    Held,

    /// <summary>The reader refused the text, with places.</summary>
    Refused,

    /// <summary>Parts switch each other without end, which the program says.</summary>
    Chattered,
}
