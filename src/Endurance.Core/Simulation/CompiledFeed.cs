using Endurance.Components;

namespace Endurance.Simulation;

/// <summary>A feed as numbers in SI units; its parts add up to one branch.</summary>
internal sealed class CompiledFeed
{
    /// <summary>Ohms below which a branch is stiffer than the balance of currents can resolve; a fraction of any joint's.</summary>
    private const double LeastOhms = 1e-6;

    public CompiledFeed(Feed feed, int from, int to, int ground)
    {
        Ground = ground;
        Name = feed.Name;
        From = from;
        To = to;
        ConductorResistance = feed.ConductorResistance.Ohms;
        ShortedResistance = feed.Diode is null ? 0 : feed.Diode.ShortResistance.Ohms;
        Law = feed.Diode switch
        {
            JunctionDiode => FeedLaw.JunctionDiode,
            IdealDiodeController => FeedLaw.IdealDiode,
            _ => FeedLaw.Conductor,
        };
        Junction = feed.Diode as JunctionDiode;
        var total = ConductorResistance + (Junction?.SeriesResistance.Ohms ?? 0);
        SeriesResistance = total > 0 ? Math.Max(total, LeastOhms) : Feed.LeastResistance.Ohms;
        if (feed.Diode is IdealDiodeController controller)
        {
            OnResistance = controller.OnResistance.Ohms;
            RegulatedDrop = controller.RegulatedDrop.Volts;
        }
        else if (Junction is { Leakage.Siemens: > 0 })
        {
            Leakage = 1 / ((1 / Junction.Leakage.Siemens) + SeriesResistance);
        }
    }

    public string Name { get; }

    public int From { get; }

    public int To { get; }

    /// <summary>Node of the ground point that its return shares; -1 for the airframe.</summary>
    public int Ground { get; }

    public bool HasDiode => Law != FeedLaw.Conductor;

    public FeedLaw Law { get; }

    /// <summary>Wire, contacts and protection, ohms; may be zero where a diode follows.</summary>
    public double ConductorResistance { get; }

    /// <summary><see cref="ConductorResistance"/> and a junction diode's own, ohms; above zero.</summary>
    public double SeriesResistance { get; }

    /// <summary>Of the diode when it has failed short, ohms.</summary>
    public double ShortedResistance { get; }

    public JunctionDiode? Junction { get; }

    /// <summary>Reverse conductance of the whole feed, siemens.</summary>
    public double Leakage { get; }

    public double OnResistance { get; }

    public double RegulatedDrop { get; }
}
