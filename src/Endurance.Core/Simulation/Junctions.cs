namespace Endurance.Simulation;

/// <summary>The junction temperatures of all feeds' diodes.</summary>
internal sealed class Junctions
{
    /// <summary>Kelvin within which a junction counts as settled: 0.2 uV of its drop, which moves a crossing by volts that fall 10 uV a second by 20 ms.</summary>
    private const double FinestJunction = 1e-4;
    private const double CoarsestJunction = 0.03;
    private const double JunctionPerTolerance = 300;

    private readonly JunctionState[] junctions;
    private readonly double settled;

    public Junctions(CompiledNetwork network, double tolerance)
    {
        junctions = new JunctionState[network.Feeds.Length];
        for (var i = 0; i < junctions.Length; i++)
        {
            junctions[i] = new JunctionState(network.Feeds[i], network.Ambient);
            AnyMoves |= junctions[i].MovesWithHeat;
        }

        settled = Math.Clamp(JunctionPerTolerance * tolerance, FinestJunction, CoarsestJunction);
    }

    /// <summary>Whether any junction follows its own heat.</summary>
    public bool AnyMoves { get; }

    public JunctionState this[int feed] => junctions[feed];

    /// <summary>Takes guesses, kelvin by feed, for the junctions that follow their heat.</summary>
    public void Start(ReadOnlySpan<double> kelvin)
    {
        for (var i = 0; i < junctions.Length; i++)
        {
            if (junctions[i].MovesWithHeat)
                junctions[i].StartAt(kelvin[i]);
        }
    }

    /// <summary>Sets every junction to ambient plus its heat times its heat path; <see langword="true"/> when any moved.</summary>
    /// <param name="watts">Heat in a feed's diode.</param>
    public bool Move(Func<int, double> watts)
    {
        if (!AnyMoves)
            return false;
        var moved = false;
        for (var i = 0; i < junctions.Length; i++)
        {
            if (junctions[i].MovesWithHeat)
                moved |= junctions[i].MoveTo(watts(i), settled);
        }

        return moved;
    }
}
