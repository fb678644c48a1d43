namespace Endurance.Simulation;

/// <summary>A branch of the network by now, with its current at the voltage it was last evaluated at.</summary>
internal struct Branch
{
    private double amperes;
    private double second;
    private double third;
    private double rest;
    private double low;
    private double high;

    /// <summary>Its current law.</summary>
    public BranchKind Kind { get; init; }

    /// <summary>Index of the feed, battery, alternator or charger.</summary>
    public int Part { get; init; }

    /// <summary>Node that a positive current leaves; -1 for the airframe.</summary>
    public int From { get; init; }

    /// <summary>Node that it enters; -1 for the airframe.</summary>
    public int To { get; init; }

    /// <summary>Node of the ground point through which the current comes back; -1 for the airframe.</summary>
    public int Return { get; init; }

    /// <summary>Siemens, watts or amperes, by its law.</summary>
    public double Value { get; set; }

    /// <summary>Ohms to the far end of a constant power; volts of the knee of a constant current.</summary>
    public double Detail { get; init; }

    /// <summary>Whether its law is more than straight lines with kinks.</summary>
    public readonly bool IsCurved => Kind is BranchKind.Junction or BranchKind.Power or BranchKind.ChargerInput;

    /// <summary>Whether what flows through it turns to heat or work: a feed, a load, a coil or a field.</summary>
    public bool IsSink { get; init; }

    /// <summary>Where its current is to be read by others; -1 for nowhere.</summary>
    public int Slot { get; init; }

    /// <summary>Volts along it, less those of its return, at which the law was evaluated.</summary>
    public double Volts { get; set; }

    /// <summary>Current by now: by its law, or by the expansion of the law when the volts have moved a little since.</summary>
    public double Amperes { get; private set; }

    /// <summary>Derivative of the current by voltage, zero or more but for constant power.</summary>
    public double Siemens { get; private set; }

    /// <summary>Which of the pieces of its law, between kinks, it is on; 0 where there is but one.</summary>
    public int Piece { get; private set; }

    /// <summary>Sets the law at its volts: a straight line between two voltages.</summary>
    public void SetLine(double amperes, double siemens, double low, double high, int piece = 0)
    {
        SetCurve(amperes, siemens, 0, 0, 0, low, high);
        Piece = piece;
    }

    /// <summary>Sets the law at its volts.</summary>
    /// <param name="amperes">Current.</param>
    /// <param name="siemens">Its derivative by voltage.</param>
    /// <param name="second">Half the second derivative, amperes per square volt.</param>
    /// <param name="third">A sixth of the third.</param>
    /// <param name="rest">At least the size of a 24th of the fourth, anywhere between the bounds.</param>
    /// <param name="low">Volts down to which the derivatives hold.</param>
    /// <param name="high">Volts up to which they hold.</param>
    public void SetCurve(double amperes, double siemens, double second, double third, double rest, double low, double high)
    {
        (Amperes, this.amperes, Siemens) = (amperes, amperes, siemens);
        (this.second, this.third, this.rest) = (second, third, rest);
        (this.low, this.high) = (low, high);
        Piece = 0;
    }

    /// <summary>Adds a resistance beside it.</summary>
    public void AddParallel(double siemens)
    {
        Amperes = amperes += siemens * Volts;
        Siemens += siemens;
    }

    /// <summary>Ends the range in which the derivatives hold at a kink, on whichever side that is.</summary>
    public void StopAt(double kink)
    {
        if (Volts < kink)
            high = Math.Min(high, kink);
        else
            low = Math.Max(low, kink);
        Piece = Volts < kink ? 1 : 0;
    }

    /// <summary>Amperes by which the law departs from its tangent some volts further on.</summary>
    /// <param name="move">Volts from where the law was evaluated.</param>
    /// <param name="unsure">Amperes that this may be wrong by.</param>
    public readonly double Departure(double move, out double unsure)
    {
        var square = move * move;
        unsure = rest * square * square;
        return square * (second + (move * third));
    }

    /// <summary>Takes the current that the derivatives give some volts further on; <see langword="false"/>: they do not hold so far.</summary>
    /// <param name="move">Volts from where the law was evaluated.</param>
    public bool TryMove(double move)
    {
        Amperes = amperes + (move * (Siemens + (move * (second + (move * third)))));
        return Volts + move >= low && Volts + move <= high;
    }
}
