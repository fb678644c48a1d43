namespace Endurance.Simulation;

/// <summary>How warm every breaker and fuse is: heat theta with d theta/dt = ((I/In)^2 - theta)/tau, open at the square of its factor.</summary>
/// <remarks>
/// Heat acts on nothing until it trips, so it is not integrated with the state: inside a step the squared current is taken
/// as straight between its ends, for which the equation has a closed form, exact for any length of step.
/// </remarks>
internal sealed class Heats
{
    /// <summary>Share of the heat that trips, above which steps are short.</summary>
    private const double Near = 0.9;

    private readonly CompiledNetwork network;
    private readonly NetworkEquations equations;
    private readonly double[] heat;
    private readonly double[] first;
    private readonly double[] last;
    private double length;
    private double nearest;

    public Heats(CompiledNetwork network, NetworkEquations equations)
    {
        this.network = network;
        this.equations = equations;
        heat = new double[network.Breakers.Length];
        first = new double[heat.Length];
        last = new double[heat.Length];
    }

    /// <summary>Seconds of a step near a trip.</summary>
    public static double ShortStep => 20;

    /// <summary>Seconds into the step at which <see cref="this[int]"/> is read.</summary>
    public double Elapsed { get; set; }

    /// <summary>Heat of a protection at <see cref="Elapsed"/>.</summary>
    public double this[int i]
    {
        get
        {
            if (Elapsed <= 0)
                return heat[i];
            var tau = network.Breakers[i].TimeConstant;
            var slope = length > 0 ? (last[i] - first[i]) / length : 0;
            var lag = heat[i] - first[i] + (slope * tau);
            return first[i] + (slope * (Elapsed - tau)) + (lag * Math.Exp(-Elapsed / tau));
        }
    }

    /// <summary>Takes the steady heat of the present currents, at most that of the rating.</summary>
    public void StartSteady()
    {
        for (var i = 0; i < heat.Length; i++)
            heat[i] = Math.Min(1, Square(i));
    }

    /// <summary>Takes the present currents as those at the start of a step.</summary>
    public void StartStep()
    {
        for (var i = 0; i < heat.Length; i++)
            first[i] = Square(i);
    }

    /// <summary>Whether a step begins or ends so near a trip that a straight line over its length says too little about when; for after <see cref="EndStep"/>.</summary>
    public bool IsTooCoarse => length > ShortStep && nearest > Near;

    /// <summary>Takes the present currents as those at the end of a step; <see langword="true"/> when something would have tripped by then.</summary>
    public bool EndStep(double seconds)
    {
        length = seconds;
        var any = false;
        Elapsed = seconds;
        nearest = 0;
        for (var i = 0; i < heat.Length; i++)
        {
            last[i] = Square(i);
            any |= this[i] > network.Breakers[i].Limit;
            nearest = Math.Max(nearest, Math.Max(this[i], heat[i]) / network.Breakers[i].Limit);
        }

        Elapsed = 0;
        return any;
    }

    /// <summary>Moves on to an instant of the step.</summary>
    public void Commit(double seconds)
    {
        Elapsed = seconds;
        for (var i = 0; i < heat.Length; i++)
            last[i] = this[i];
        last.CopyTo(heat, 0);
        Elapsed = 0;
    }

    /// <summary>Amperes through a protection by now.</summary>
    public double Amperes(int i)
    {
        var breaker = network.Breakers[i];
        return breaker.Feed >= 0 ? equations.FeedAmperes[breaker.Feed] : equations.LoadAmperes(breaker.Load);
    }

    private double Square(int i)
    {
        var multiple = Amperes(i) / network.Breakers[i].Rating;
        return multiple * multiple;
    }
}
