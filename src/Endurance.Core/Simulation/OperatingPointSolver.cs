namespace Endurance.Simulation;

/// <summary>
/// Finds the bus voltages at one instant by Newton's method with a line search; keeps the last solution as the next start.
/// </summary>
/// <remarks>
/// Without constant-power loads every branch current rises with its voltage, so the network is the gradient of a strictly
/// convex co-content (Millar 1951) and the search converges from anywhere. Constant power is brought in by continuation;
/// a solution counts only where all pivots of the Jacobian are positive, which holds on the highest branch alone.
/// One instance a run; not for sharing between threads.
/// </remarks>
internal sealed class OperatingPointSolver
{
    private const int WarmIterations = 12;
    private const int ColdIterations = 200;

    private const double SmallestPowerStep = 1e-7;

    private readonly CompiledNetwork network;
    private readonly NetworkEquations equations;
    private readonly CollapseProbe collapse;
    private readonly int n;
    private readonly NodalNewton newton;
    private readonly double[] safe;
    private readonly double[] descent;
    private readonly bool mayFloat;
    private SmallStep asks;

    /// <param name="network">The network.</param>
    /// <param name="run">Its discrete state.</param>
    /// <param name="tolerance">Of the run, in the unit of a state of charge: a coarse one lets balances and junctions be coarser too.</param>
    public OperatingPointSolver(CompiledNetwork network, RunState run, double tolerance)
    {
        this.network = network;
        n = network.NodeCount;
        equations = new NetworkEquations(network, run, tolerance);
        newton = new NodalNewton(equations, network.Elimination, tolerance);
        safe = new double[n];
        collapse = new CollapseProbe(network, run, equations);
        descent = new double[n];
        const double tinySaturation = 1e-6;
        mayFloat = network.Feeds.Any(feed => feed.Law == FeedLaw.IdealDiode
            || (feed.Junction is { } junction && junction.SaturationCurrent.Amperes < tinySaturation));
    }

    public NetworkEquations Equations => equations;

    /// <summary>Bus voltages of the last solution.</summary>
    public double[] Volts => equations.Volts;

    /// <summary>After a failed <see cref="TrySolve"/>: the buses whose voltage was falling away.</summary>
    public bool[] CollapsedBuses => collapse.Buses;

    /// <summary>After a failed <see cref="TrySolve"/>: the loads whose own conductors cannot carry their power.</summary>
    public bool[] CollapsedLoads => collapse.Loads;

    /// <summary>Whether the last solution is one of the present discrete state.</summary>
    public bool IsWarm { get; private set; }

    public int Solves { get; private set; }

    public int Iterations => newton.Iterations;

    /// <summary>Forgets the last solution; for after a jump that moves the network far.</summary>
    public void StartCold()
    {
        IsWarm = false;
        newton.StartCold();
        equations.TakeState();
    }

    /// <summary>Solves for the batteries' EMF and resistance set in <see cref="Equations"/>; <see langword="false"/>: no operating point exists.</summary>
    /// <exception cref="UnsolvedNetworkException">The network without constant-power loads did not converge.</exception>
    public bool TrySolve()
    {
        Solves++;
        if (TryHeated())
            return true;
        IsWarm = false;
        return false;
    }

    /// <summary>Solves again until no junction and no charger moves: a junction's temperature follows its heat, a charger's input its output.</summary>
    private bool TryHeated()
    {
        const int rounds = 120, together = 20;
        var chargersMove = false;
        equations.Chargers.Start();
        for (var i = 0; i < rounds; i++)
        {
            // What a charger takes moves by less than a balance may be off, which near a collapse is many times that in volts.
            asks = chargersMove ? SmallStep.Always : mayFloat && i == 0 ? SmallStep.WhereLoose : SmallStep.Never;
            if (!TryAtFixedJunctions())
            {
                // What was guessed for a charger can be more than the network gives, where what it would settle at is not.
                chargersMove = equations.Chargers.TryLower();
                if (chargersMove)
                    continue;
                return TryRaised();
            }

            chargersMove = equations.MoveChargers();
            if (chargersMove && equations.Chargers.IsAnyCornered)
                return TryRaised();
            // Where each throws the other off, chargers settle first at every temperature.
            if (chargersMove && i >= together)
                continue;
            if (!equations.MoveJunctions() & !chargersMove)
                return true;
        }

        // A network that is only nearly right is not an answer.
        if (chargersMove)
            throw UnsolvedNetworkException.OfChargers(network.Chargers[0].Name, network.NodeNames[network.Chargers[0].From]);
        equations.ThermalRunaway = true;
        return true;
    }

    /// <summary>Solves with what chargers took when there was first no operating point, so that the collapse is marked as it was then.</summary>
    private bool TryRaised() => equations.Chargers.TryRaise() && TryAtFixedJunctions() && !equations.MoveChargers();

    private bool TryAtFixedJunctions()
    {
        equations.PowerShare = 1;
        if (IsWarm && newton.TryBalance(WarmIterations, asks))
            return true;
        if (!TryFromNothing())
            return false;
        IsWarm = true;
        return true;
    }

    /// <summary>From the network with resistors in place of constant power, which always has a solution, up to the full power.</summary>
    private bool TryFromNothing()
    {
        equations.SetHighStart();
        equations.PowerShare = 0;
        if (!newton.TryBalance(ColdIterations, SmallStep.Always))
            throw new UnsolvedNetworkException(network.NodeNames[equations.WorstBus()], equations.WorstResidual());
        var reached = 0.0;
        var increment = 1.0;
        while (reached < 1)
        {
            equations.Volts.CopyTo(safe, 0);
            equations.PowerShare = Math.Min(1, reached + increment);
            if (newton.TryBalance(WarmIterations, asks) && newton.IsStable())
            {
                reached = equations.PowerShare;
                increment *= 2;
                continue;
            }

            safe.CopyTo(equations.Volts, 0);
            increment /= 2;
            if (increment < SmallestPowerStep)
            {
                if (TryDescend())
                    return true;
                collapse.TakeFall(safe);
                safe.CopyTo(equations.Volts, 0);
                collapse.Mark(reached);
                return false;
            }
        }

        return true;
    }

    /// <summary>
    /// Where the highest solution ends, a lower stable one may remain: an alternator at its limit falls to the voltage of a full
    /// battery. Follows the network down as capacitors on the buses would let it, in bounded steps, until it balances or is dead.
    /// </summary>
    private bool TryDescend()
    {
        const double largestFall = 0.25;
        const double dead = 1;
        equations.PowerShare = 1;
        for (var i = 0; i < ColdIterations; i++)
        {
            equations.Volts.CopyTo(descent, 0);
            if (newton.TryBalance(WarmIterations, asks) && newton.IsStable())
                return collapse.LowestPowerVolts() >= dead;
            descent.CopyTo(equations.Volts, 0);
            equations.Assemble();
            if (newton.TryShiftedStep() is not { } largest)
                throw new UnsolvedNetworkException(network.NodeNames[equations.WorstBus()], equations.WorstResidual());
            var scale = largest > largestFall ? largestFall / largest : 1;
            for (var b = 0; b < n; b++)
                equations.Volts[b] += scale * newton.Step[b];
            if (collapse.LowestPowerVolts() < dead)
                return false;
        }

        return false;
    }
}
