namespace Endurance.Simulation;

/// <summary>How warm every breaker and fuse is: heat theta with d theta/dt = ((I/In)^2 - theta)/tau, open at the square of its factor.</summary>
/// <remarks>
/// Heat acts on nothing until it trips, so it is not integrated with the state: inside a step the squared current is taken as the
/// cubic through its values at both ends and at two stages between, for which the equation is solved at any length of step.
/// </remarks>
internal sealed class Heats
{
    /// <summary>Share of the heat that trips, above which steps are short.</summary>
    private const double Near = 0.9;

    /// <summary>Seconds of the shortest step that is made shorter for a current that bends.</summary>
    private const double ShortestStep = 0.05;

    /// <summary>Seconds by which a trip may be told early or late for the cubic.</summary>
    private const double LateBy = 0.02;

    /// <summary>Share of the heat that trips, below which being off it matters to no trip.</summary>
    private const double LeastOff = 1e-5;

    /// <summary>Most of the cubic term that a cubic through four points can be off by the next one.</summary>
    private const double CubicShare = 0.02;

    private readonly CompiledNetwork network;
    private readonly NetworkEquations equations;
    private readonly double[] heat;
    private readonly double[] first;
    private readonly double[] early;
    private readonly double[] late;
    private readonly double[] last;
    private readonly HeatCurve[] curves;
    private readonly int earlyStage;
    private readonly double earlyNode;
    private readonly double lateNode;
    private double length;
    private bool isTooCoarse;

    /// <param name="network">The network.</param>
    /// <param name="equations">Its currents by now.</param>
    /// <param name="stageNodes">Where in a step, 0 to 1, the stages stand at which <see cref="TakeStage"/> is called.</param>
    public Heats(CompiledNetwork network, NetworkEquations equations, ReadOnlySpan<double> stageNodes)
    {
        this.network = network;
        this.equations = equations;
        heat = new double[network.Breakers.Length];
        first = new double[heat.Length];
        early = new double[heat.Length];
        late = new double[heat.Length];
        last = new double[heat.Length];
        curves = new HeatCurve[heat.Length];
        earlyStage = Math.Max(1, (stageNodes.Length / 2) - 1);
        (earlyNode, lateNode) = (stageNodes[earlyStage], stageNodes[earlyStage + 1]);
    }

    /// <summary>Seconds of the longest step near a trip.</summary>
    private const double ShortStep = 20;

    /// <summary>Seconds into the step at which <see cref="this[int]"/> is read.</summary>
    public double Elapsed { get; set; }

    /// <summary>Heat of a protection at <see cref="Elapsed"/>.</summary>
    public double this[int i]
    {
        get
        {
            if (Elapsed <= 0 || length <= 0)
                return heat[i];
            return curves[i].HeatAt(Elapsed / length, heat[i], length / network.Breakers[i].TimeConstant);
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

    /// <summary>Takes the present currents as those at a stage of a step; the first after its start is stage 1.</summary>
    public void TakeStage(int stage)
    {
        if (stage != earlyStage && stage != earlyStage + 1)
            return;
        var squares = stage == earlyStage ? early : late;
        for (var i = 0; i < squares.Length; i++)
            squares[i] = Square(i);
    }

    /// <summary>Takes the present currents as those at the end of a step; <see langword="true"/> when something would have tripped by then.</summary>
    public bool EndStep(double seconds)
    {
        length = seconds;
        var any = false;
        Elapsed = seconds;
        isTooCoarse = false;
        for (var i = 0; i < heat.Length; i++)
        {
            last[i] = Square(i);
            curves[i] = HeatCurve.Through(first[i], earlyNode, early[i], lateNode, late[i], last[i]);
            any |= this[i] > network.Breakers[i].Limit;
            isTooCoarse |= IsTooCoarseFor(i);
        }

        Elapsed = 0;
        return any;
    }

    /// <summary>
    /// Seconds of a step to try in place of the last, which began or ended so near a trip that its cubic says too little about when: near
    /// a collapse the current of a battery that is giving out bends upwards within seconds. <see langword="null"/>: it says enough.
    /// </summary>
    public double? FinerStep => !isTooCoarse ? null : length > ShortStep ? Math.Max(ShortStep, length / 5) : length / 2;

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

    private bool IsTooCoarseFor(int i)
    {
        var breaker = network.Breakers[i];
        if (length <= ShortestStep || Math.Max(this[i], heat[i]) <= Near * breaker.Limit)
            return false;
        var off = CubicShare * Math.Abs(curves[i].Cubic) * Math.Min(1, length / breaker.TimeConstant);
        var rise = Math.Abs(last[i] - this[i]) / breaker.TimeConstant;
        return length > ShortStep || off > Math.Max(LateBy * rise, LeastOff * breaker.Limit);
    }

    private double Square(int i)
    {
        var multiple = Amperes(i) / network.Breakers[i].Rating;
        return multiple * multiple;
    }
}
