namespace Endurance.Fuzz;

/// <summary>What became of one seed.</summary>
internal enum Verdict
{
    /// <summary>Simulated, and everything held.</summary>
    Held,

    /// <summary>The reader refused the text, with places.</summary>
    Refused,

    /// <summary>Values out of all proportion were not solved to the accuracy asked for, which the program says and gives no number.</summary>
    Unsolved,

    /// <summary>Parts switch each other without end, or a case is endless to compute, which the program says.</summary>
    Chattered,
}
