using System.Collections.Immutable;

namespace Endurance.Reports.Diagram;

/// <summary>An upright line from one bus to another, or one that hangs from a bus.</summary>
/// <param name="Name">Of the feed, charger, battery or alternator.</param>
/// <param name="From">Row of the bus that current comes from.</param>
/// <param name="To">Row of the bus that it goes to; <see langword="null"/>: to ground.</param>
/// <param name="Parts">In series, from <paramref name="From"/> on.</param>
internal sealed record DiagramBranch(string Name, int From, int? To, ImmutableArray<DiagramPart> Parts)
{
    /// <summary>Row of the upper bus.</summary>
    public int Upper => Math.Min(From, To ?? From);

    /// <summary>First row below the line; a hanging line ends above the next bus.</summary>
    public int Lower => To is { } to ? Math.Max(From, to) : From + 1;

    /// <summary>Current goes from the lower bus to the upper.</summary>
    public bool GoesUp => To < From;
}
