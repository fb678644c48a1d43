namespace Endurance.Simulation;

/// <summary>The current laws of all feeds, with the junction temperatures of their diodes.</summary>
internal sealed class FeedDiodes
{
    /// <summary>Kelvin within which a junction counts as settled; far below the 0.01 K that matters, so that rates stay smooth.</summary>
    private const double JunctionTolerance = 1e-3;

    private readonly CompiledNetwork network;
    private readonly RunState run;
    private readonly JunctionState[] junctions;

    public FeedDiodes(CompiledNetwork network, RunState run)
    {
        this.network = network;
        this.run = run;
        junctions = [.. network.Feeds.Select(feed => new JunctionState(feed, network.Ambient))];
        AnyMoves = junctions.Any(junction => junction.MovesWithHeat);
    }

    /// <summary>Whether any junction follows its own heat.</summary>
    public bool AnyMoves { get; }

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
                moved |= junctions[i].MoveTo(watts(i), JunctionTolerance);
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
