using Endurance.Numerics;

namespace Endurance.Simulation;

/// <summary>Newton's method with a line search on the currents of a network.</summary>
/// <remarks>Without constant power the currents are the slope of a strictly convex co-content, which the line search brings down.</remarks>
internal sealed class NodalNewton
{
    /// <summary>Amperes of error in a bus's balance at the finest tolerance of a run, and for each unit of a coarser one.</summary>
    private const double LeastResidual = 1e-9;
    private const double ResidualPerTolerance = 1e-2;
    private const double RelativeResidual = 3e-14;

    /// <summary>Volts; asked for where a bus can float behind parts that block.</summary>
    private const double LargestLastStep = 1e-4;

    /// <summary>Iterations before the line search grows cautious; more than a network without kinks needs.</summary>
    private const int HopefulIterations = 20;

    private readonly NetworkEquations equations;
    private readonly Elimination elimination;
    private readonly int n;
    private readonly double[] step;
    private readonly double[] factors;
    private readonly double[] before;
    private readonly double[] move;
    private readonly double[] rest;
    private readonly double[] departed;
    private readonly double absoluteResidual;
    private bool isAnyLoose = true;

    /// <summary>Volts above which no bus can be where no ground is lifted: a bus that floats balances at any voltage, as far as currents can tell.</summary>
    private double ceiling;

    /// <param name="equations">Currents of the network.</param>
    /// <param name="elimination">How its Jacobian is factored.</param>
    /// <param name="tolerance">Of the run, in the unit of a state of charge: a coarse one lets balances be coarser too.</param>
    public NodalNewton(NetworkEquations equations, Elimination elimination, double tolerance)
    {
        this.elimination = elimination;
        this.equations = equations;
        n = equations.Volts.Length;
        absoluteResidual = Math.Max(LeastResidual, ResidualPerTolerance * tolerance);
        step = new double[n];
        factors = new double[n * n];
        before = new double[n];
        move = new double[n];
        rest = new double[n];
        departed = new double[n];
    }

    public int Iterations { get; private set; }

    /// <summary>The last step in volts a node.</summary>
    public ReadOnlySpan<double> Step => step;

    /// <summary>Forgets which buses were tied to the rest; for after a jump.</summary>
    public void StartCold() => isAnyLoose = true;

    /// <summary>Whether all pivots are positive, as on the highest solution alone.</summary>
    public bool IsStable() => elimination.TryFactor(equations.Jacobian, factors);

    /// <summary>Makes a step out of a Jacobian that was made positive by force; returns its largest component in volts.</summary>
    /// <returns><see langword="null"/>: nothing makes it positive.</returns>
    public double? TryShiftedStep() => elimination.TryFactorShifted(equations.Jacobian, factors) ? Direction() : null;

    /// <summary>Iterates from the present voltages until the currents balance.</summary>
    /// <param name="limit">Most iterations.</param>
    /// <param name="asks">When a small last step is asked for too: a bus that nothing draws from balances at any voltage above its source.</param>
    /// <returns>Whether the currents balance.</returns>
    public bool TryBalance(int limit, SmallStep asks)
    {
        const double slack = 1e-3; // volts
        ceiling = equations.HighestSource + slack;
        equations.Assemble();
        var lastStep = double.PositiveInfinity;
        for (var i = 0; i < limit; i++)
        {
            if (IsBalanced() && IsSmallEnough(lastStep, asks))
                return IsSolved();
            Iterations++;
            if (!TryFactor())
                return false;
            if (asks == SmallStep.WhereLoose)
                isAnyLoose = HasLoosePivot();
            lastStep = Direction();
            equations.Volts.CopyTo(before, 0);
            var slope = Slope();
            if (IsSmallEnough(lastStep, asks) && TryFinish())
                return IsSolved();
            if (!Search(slope, isCautious: i >= HopefulIterations))
                return false;
        }

        return IsBalanced() && IsSolved();
    }

    private bool IsSolved()
    {
        equations.Publish();
        return !equations.IsBeyondAnEnd;
    }

    private bool IsSmallEnough(double lastStep, SmallStep asks) =>
        lastStep <= LargestLastStep || asks == SmallStep.Never || (asks == SmallStep.WhereLoose && !isAnyLoose);

    /// <summary>
    /// Takes the whole step and goes on by the expansions of the branches and the same factors, where these are sure to be near
    /// enough: it evaluates no current law and factors nothing.
    /// </summary>
    private bool TryFinish()
    {
        const int passes = 4;
        step.CopyTo(move, 0);
        Array.Clear(departed);
        for (var i = 0; i < passes; i++)
        {
            var unsure = equations.Depart(move, rest);
            if (!(unsure <= absoluteResidual))
                return false;
            var largest = 0.0;
            for (var b = 0; b < n; b++)
            {
                var left = rest[b] - departed[b];
                (rest[b], departed[b]) = (left, rest[b]);
                largest = Math.Max(largest, Math.Abs(left));
            }

            if (largest + unsure <= absoluteResidual)
                return equations.TryMove(move) && IsBalanced();
            elimination.Solve(factors, rest);
            for (var b = 0; b < n; b++)
                move[b] -= rest[b];
        }

        return false;
    }

    /// <summary>
    /// Factors the Jacobian. Without constant power every pivot is positive; those that rounding has taken, of buses that only their
    /// leak ties to ground while they are tied to each other firmly, are put back.
    /// </summary>
    private bool TryFactor() => elimination.TryFactor(equations.Jacobian, factors)
        || (equations.PowerShare == 0 && elimination.TryFactorShifted(equations.Jacobian, factors));

    /// <summary>Whether some group of buses is tied to the rest by almost nothing: its last pivot is the conductance that is left.</summary>
    private bool HasLoosePivot()
    {
        const double tight = 1e-3; // siemens
        for (var i = 0; i < n; i++)
        {
            if (factors[(i * n) + i] * tight > 1)
                return true;
        }

        return false;
    }

    /// <summary>Fills <see cref="step"/> and returns its largest component in volts.</summary>
    private double Direction()
    {
        for (var i = 0; i < n; i++)
            step[i] = -equations.Residual[i];
        elimination.Solve(factors, step);
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
    /// <remarks>
    /// Where the co-content bends so sharply that no voltage lies between its falling and its rising side, as where a part that blocks
    /// begins to conduct, it goes just past the bend: the next Jacobian then knows the slope that this step ran into.
    /// </remarks>
    /// <param name="first">The slope at its start.</param>
    /// <param name="isCautious">
    /// Takes no point past the lowest one unless the co-content is certain to be lower there than at the start. Kinks can
    /// otherwise send the search to and fro; it costs a few more trials.
    /// </param>
    private bool Search(double first, bool isCautious)
    {
        const int tries = 120;
        double low = 0, lowSlope = first, high = 0, highSlope = 0;
        var at = 1.0;
        for (var i = 0; i < tries; i++)
        {
            MoveTo(at);
            var slope = Slope();
            var isLower = slope <= 0 || !isCautious || (low * lowSlope) + ((at - low) * slope) < 0;
            var isFarEnough = high == 0 || slope >= 0.5 * first;
            if ((slope <= 0.5 * Math.Abs(first) && isLower && isFarEnough) || IsBalanced())
                return true;
            if (slope > 0)
                (high, highSlope) = (at, slope);
            else
                (low, lowSlope) = (at, slope);
            if (high == 0)
                return false;
            if (IsOneVoltage(low, high))
                break;
            var secant = low + ((high - low) * lowSlope / (lowSlope - highSlope));
            at = i % 2 == 0 ? Math.Clamp(secant, low + (0.1 * (high - low)), low + (0.9 * (high - low))) : low + ((high - low) / 2);
        }

        MoveTo(high);
        return true;
    }

    /// <summary>Whether two places along the step are, at every node, some units in the last place apart.</summary>
    private bool IsOneVoltage(double low, double high)
    {
        const double finest = 4e-15; // of the volts
        for (var i = 0; i < n; i++)
        {
            if (Math.Abs(step[i]) * (high - low) > finest * Math.Abs(before[i]))
                return false;
        }

        return true;
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
            if (!(Math.Abs(residual[i]) <= absoluteResidual + (RelativeResidual * scale))
                || (Math.Abs(volts[i]) > ceiling && Math.Abs(volts[i]) > ceiling + equations.Lift()))
                return false;
        }

        return true;
    }
}
