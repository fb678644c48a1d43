namespace Endurance.Simulation;

/// <summary>The current laws of all feeds, with the junction temperatures of their diodes.</summary>
internal sealed class FeedBranches
{
    /// <summary>Kelvin within which a junction counts as settled: so little that rates stay smooth at the run's tolerance.</summary>
    private const double FinestJunction = 1e-3;
    private const double CoarsestJunction = 0.03;
    private const double JunctionPerTolerance = 300;

    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly JunctionState[] junctions;
    private readonly double settled;
    private readonly int[] live;
    private int liveCount;

    public FeedBranches(CompiledNetwork network, RunState run, double tolerance)
    {
        this.network = network;
        this.run = run;
        junctions = [.. network.Feeds.Select(feed => new JunctionState(feed, network.Ambient))];
        settled = Math.Clamp(JunctionPerTolerance * tolerance, FinestJunction, CoarsestJunction);
        live = new int[network.Feeds.Length];
        AnyMoves = junctions.Any(junction => junction.MovesWithHeat);
    }

    /// <summary>Whether any junction follows its own heat.</summary>
    public bool AnyMoves { get; }

    /// <summary>The feeds that conduct between buses that a source reaches.</summary>
    public ReadOnlySpan<int> Live => live.AsSpan(0, liveCount);

    /// <summary>Works out <see cref="Live"/> after the discrete state has changed.</summary>
    public void TakeState()
    {
        liveCount = 0;
        for (var i = 0; i < network.Feeds.Length; i++)
        {
            if (run.Conducting[i] && run.Energised[network.Feeds[i].From] && run.Energised[network.Feeds[i].To])
                live[liveCount++] = i;
        }
    }

    /// <summary>Takes guesses, kelvin by feed, for the junctions that follow their heat.</summary>
    public void Start(ReadOnlySpan<double> kelvin)
    {
        for (var i = 0; i < junctions.Length; i++)
        {
            if (junctions[i].MovesWithHeat)
                junctions[i].StartAt(kelvin[i]);
        }
    }

    /// <summary>Junction temperature of a feed's diode, kelvin.</summary>
    public double Kelvin(int feed) => junctions[feed].Kelvin;

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

    /// <summary>Current of a conducting feed at the volts along it.</summary>
    public BranchPoint Point(int index, double v)
    {
        var feed = network.Feeds[index];
        if (run.DiodeShorted[index])
        {
            var resistance = feed.ConductorResistance + feed.ShortedResistance;
            return new(v / resistance, 1 / resistance);
        }

        return feed.Law switch
        {
            FeedLaw.JunctionDiode => BranchLaw.Junction(v, junctions[index], feed.SeriesResistance, feed.Leakage),
            FeedLaw.IdealDiode => BranchLaw.IdealDiode(v, feed.OnResistance, feed.RegulatedDrop, feed.ConductorResistance),
            _ => new(v / feed.SeriesResistance, 1 / feed.SeriesResistance),
        };
    }
}
