using Endurance.Numerics;
using Endurance.Quantities;

namespace Endurance.Simulation;

/// <summary>Present junction temperature of a feed's diode, and its parameters there.</summary>
internal sealed class JunctionState
{
    /// <summary>Kelvin at which silicon and metal are long destroyed; a bound for the arithmetic only.</summary>
    private const double Hottest = 1000;

    /// <summary>Share of a move that comes back in the next, above which it is not left to die away.</summary>
    private const double SmallSwing = 0.5;

    private readonly CompiledFeed feed;
    private readonly double ambient;
    private double lastArgument = double.NegativeInfinity;
    private double lastOmega;
    private double lastMove;

    public JunctionState(CompiledFeed feed, double ambient)
    {
        this.feed = feed;
        this.ambient = ambient;
        Siemens = 1 / feed.SeriesResistance;
        if (feed.Junction is { } junction)
            Set(junction.HeatPath is null ? junction.Temperature.Kelvin : ambient);
    }

    public double Kelvin { get; private set; }

    /// <summary>Amperes.</summary>
    public double Saturation { get; private set; }

    /// <summary>n k T/q, volts.</summary>
    public double Emission { get; private set; }

    /// <summary>One over n k T/q, 1/volts.</summary>
    public double InverseEmission { get; private set; }

    /// <summary>n k T/q over all resistances of the feed, amperes.</summary>
    public double CurrentScale { get; private set; }

    /// <summary>One over all resistances of the feed, siemens.</summary>
    public double Siemens { get; }

    /// <summary>ln(Is R/a) + Is R/a with R all resistances of the feed and a the emission voltage.</summary>
    public double LogDrop { get; private set; }

    /// <summary>Wright omega of an argument; quick where the last one was near.</summary>
    public double Omega(double z)
    {
        lastOmega = WrightOmega.At(z, lastArgument, lastOmega);
        lastArgument = z;
        return lastOmega;
    }

    public bool MovesWithHeat => feed.Junction?.HeatPath is not null;

    /// <summary>Takes a guess in kelvin.</summary>
    public void StartAt(double kelvin) => Set(Math.Clamp(kelvin, ambient / 2, Hottest));

    /// <summary>Takes the temperature that belongs to a heat; <see langword="true"/> when it moved by more than the tolerance.</summary>
    public bool MoveTo(double watts, double tolerance)
    {
        var target = Math.Clamp(ambient + (watts * feed.Junction!.HeatPath!.Value), ambient / 2, Hottest);
        var move = target - Kelvin;
        if (Math.Abs(move) <= tolerance)
        {
            lastMove = 0;
            return false;
        }

        // A junction that cools as much as it has just warmed would swing for ever: it goes to the sum of the series of its swings.
        var share = move / lastMove;
        var swings = share < -SmallSwing && double.IsFinite(share);
        Set(swings ? Kelvin + (move / (1 - share)) : target);
        lastMove = swings ? 0 : move;
        return true;
    }

    private void Set(double kelvin)
    {
        Kelvin = kelvin;
        var temperature = Temperature.FromKelvin(kelvin);
        Saturation = feed.Junction!.SaturationCurrentAt(temperature).Amperes;
        Emission = feed.Junction.EmissionVoltageAt(temperature).Volts;
        InverseEmission = 1 / Emission;
        CurrentScale = Emission / feed.SeriesResistance;
        LogDrop = Math.Log(Saturation / CurrentScale) + (Saturation / CurrentScale);
    }
}
