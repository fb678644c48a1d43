using Endurance.Numerics;

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
    /// <summary>Amperes of error in a bus's balance at the finest tolerance of a run, and for each unit of a coarser one.</summary>
    private const double LeastResidual = 1e-9;
    private const double ResidualPerTolerance = 1e-3;
    private const double RelativeResidual = 1e-12;

    /// <summary>Volts; asked for where a bus can float behind parts that block.</summary>
    private const double LargestLastStep = 1e-4;

    private const int WarmIterations = 12;
    private const int ColdIterations = 200;

    /// <summary>Iterations before the line search grows cautious; more than a network without kinks needs.</summary>
    private const int HopefulIterations = 20;
    private const double SmallestPowerStep = 1e-7;

    private readonly CompiledNetwork network;
    private readonly NetworkEquations equations;
    private readonly CollapseProbe collapse;
    private readonly int n;
    private readonly double[] step;
    private readonly double[] factors;
    private readonly double[] before;
    private readonly double[] safe;
    private readonly double[] descent;
    private readonly bool mayFloat;
    private readonly double absoluteResidual;
    private bool floats;
    private bool warm;

    /// <param name="network">The network.</param>
    /// <param name="run">Its discrete state.</param>
    /// <param name="tolerance">Of the run, in the unit of a state of charge: a coarse one lets balances and junctions be coarser too.</param>
    public OperatingPointSolver(CompiledNetwork network, RunState run, double tolerance)
    {
        absoluteResidual = Math.Max(LeastResidual, ResidualPerTolerance * tolerance);
        this.network = network;
        n = network.NodeCount;
        equations = new NetworkEquations(network, run, tolerance);
        step = new double[n];
        factors = new double[n * n];
        before = new double[n];
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

    public int Solves { get; private set; }

    public int Iterations { get; private set; }

    /// <summary>Forgets the last solution; for after a jump that moves the network far.</summary>
    public void StartCold()
    {
        warm = false;
        equations.TakeState();
    }

    /// <summary>Solves for the batteries' EMF and resistance set in <see cref="Equations"/>; <see langword="false"/>: no operating point exists.</summary>
    /// <exception cref="UnsolvedNetworkException">The network without constant-power loads did not converge.</exception>
    public bool TrySolve()
    {
        Solves++;
        if (TryHeated())
            return true;
        warm = false;
        return false;
    }

    /// <summary>Solves again until no junction and no charger moves: a junction's temperature follows its heat, a charger's input its output.</summary>
    private bool TryHeated()
    {
        const int rounds = 60;
        for (var i = 0; i < rounds; i++)
        {
            floats = mayFloat && i == 0;
            if (!TryAtFixedJunctions())
                return false;
            if (!equations.MoveJunctions() & !equations.MoveChargers())
                return true;
        }

        equations.ThermalRunaway = true;
        return true;
    }

    private bool TryAtFixedJunctions()
    {
        equations.PowerShare = 1;
        if (warm && Newton(WarmIterations))
            return true;
        if (!TryFromNothing())
            return false;
        warm = true;
        return true;
    }

    /// <summary>From the network with resistors in place of constant power, which always has a solution, up to the full power.</summary>
    private bool TryFromNothing()
    {
        equations.SetHighStart();
        equations.PowerShare = 0;
        if (!Newton(ColdIterations, settle: true))
            throw new UnsolvedNetworkException(network.NodeNames[equations.WorstBus()], equations.WorstResidual());
        var reached = 0.0;
        var increment = 1.0;
        while (reached < 1)
        {
            equations.Volts.CopyTo(safe, 0);
            equations.PowerShare = Math.Min(1, reached + increment);
            if (Newton(WarmIterations) && IsStable())
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
            if (Newton(WarmIterations) && IsStable())
                return collapse.LowestPowerVolts() >= dead;
            descent.CopyTo(equations.Volts, 0);
            equations.Assemble();
            if (!network.Elimination.TryFactorShifted(equations.Jacobian, factors))
                throw new UnsolvedNetworkException(network.NodeNames[equations.WorstBus()], equations.WorstResidual());
            var largest = Direction();
            var scale = largest > largestFall ? largestFall / largest : 1;
            for (var b = 0; b < n; b++)
                equations.Volts[b] += scale * step[b];
            if (collapse.LowestPowerVolts() < dead)
                return false;
        }

        return false;
    }

    private bool IsStable()
    {
        equations.Jacobian.CopyTo(factors, 0);
        return network.Elimination.TryFactor(factors);
    }

    /// <param name="limit">Most iterations.</param>
    /// <param name="settle">Asks for a small last step too: a bus that nothing draws from balances at any voltage above its source.</param>
    private bool Newton(int limit, bool settle = false)
    {
        equations.Assemble();
        var lastStep = double.PositiveInfinity;
        for (var i = 0; i < limit; i++)
        {
            if (IsBalanced() && (!(floats || settle) || lastStep <= LargestLastStep))
                return !equations.IsBeyondAnEnd;
            Iterations++;
            equations.Jacobian.CopyTo(factors, 0);
            if (!network.Elimination.TryFactor(factors))
                return false;
            lastStep = Direction();
            if (!Search(isCautious: i >= HopefulIterations))
                return false;
        }

        return IsBalanced() && !equations.IsBeyondAnEnd;
    }

    /// <summary>Fills <see cref="step"/> and returns its largest component in volts.</summary>
    private double Direction()
    {
        for (var i = 0; i < n; i++)
            step[i] = -equations.Residual[i];
        network.Elimination.Solve(factors, step);
        var largest = 0.0;
        foreach (var component in step)
            largest = Math.Max(largest, Math.Abs(component));
        const double certain = 2; // volts; the highest source is never below 1 V
        if (largest > certain && largest > 2 * equations.HighestSource)
        {
            var bound = 2 * equations.HighestSource;
            for (var i = 0; i < n; i++)
                step[i] *= bound / largest;
        }

        return largest;
    }

    /// <summary>Moves along the step until the slope of the co-content has lost at least half of its size.</summary>
    /// <param name="isCautious">
    /// Takes no point past the lowest one unless the co-content is certain to be lower there than at the start. Kinks can
    /// otherwise send the search to and fro; it costs a few more trials.
    /// </param>
    private bool Search(bool isCautious)
    {
        const int tries = 60;
        equations.Volts.CopyTo(before, 0);
        var first = Slope();
        double low = 0, lowSlope = first, high = 0, highSlope = 0;
        var at = 1.0;
        for (var i = 0; i < tries; i++)
        {
            MoveTo(at);
            var slope = Slope();
            var isLower = slope <= 0 || !isCautious || (low * lowSlope) + ((at - low) * slope) < 0;
            if ((slope <= 0.5 * Math.Abs(first) && isLower) || IsBalanced())
                return true;
            if (slope > 0)
                (high, highSlope) = (at, slope);
            else
                (low, lowSlope) = (at, slope);
            if (high == 0)
                return false;
            var secant = low + ((high - low) * lowSlope / (lowSlope - highSlope));
            at = Math.Clamp(secant, low + (0.1 * (high - low)), low + (0.9 * (high - low)));
        }

        return false;
    }

    private void MoveTo(double at)
    {
        for (var i = 0; i < n; i++)
            equations.Volts[i] = before[i] + (at * step[i]);
        equations.Assemble();
    }

    private double Slope()
    {
        var sum = 0.0;
        for (var i = 0; i < n; i++)
            sum += equations.Residual[i] * step[i];
        return sum;
    }

    private bool IsBalanced()
    {
        var residual = equations.Residual;
        var jacobian = equations.Jacobian;
        var volts = equations.Volts;
        for (var i = 0; i < n; i++)
        {
            var scale = Math.Abs(jacobian[(i * n) + i] * volts[i]);
            if (!(Math.Abs(residual[i]) <= absoluteResidual + (RelativeResidual * scale)))
                return false;
        }

        return true;
    }
}
