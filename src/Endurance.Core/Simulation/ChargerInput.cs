namespace Endurance.Simulation;

/// <summary>The input power of a charger, which follows its output from one solve of the network to the next.</summary>
/// <remarks>
/// Where a charger feeds its own input by way of the network, each solve leaves a share of the last move. Below one, every other
/// move goes to the sum of that geometric series (Aitken 1926); from there on the power runs away from where it is, and long
/// strides bring it to where something limits it. Where that takes long, and between a power at which it gains and one at which it
/// loses, or has no operating point, halves lead to the place where it stands.
/// </remarks>
internal sealed class ChargerInput
{
    /// <summary>Watts within which it counts as settled.</summary>
    private const double Tolerance = 1e-8;

    /// <summary>Watts that count as none: what a diode's leakage takes is below the balance of currents.</summary>
    private const double None = 1e-6;

    /// <summary>Share of the last move that is left, above which no sum is trusted.</summary>
    private const double LargestShare = 0.98;

    private const double FirstStride = 4;
    private const double LargestStride = 1e4;

    /// <summary>Moves after which the places found so far close in on where it stands; twice as many each time that they proved to have moved.</summary>
    private const int FirstPatience = 12;

    /// <summary>Powers without an operating point that are tried before it counts as a collapse.</summary>
    private const int MostLowered = 12;

    /// <summary>Share of a power without an operating point within which no other is told from it.</summary>
    private const double Corner = 1e-6;

    private double gains;
    private double gain;
    private double loses;
    private double loss;
    private int moves;
    private int patience;
    private int lowered;
    private double asked;
    private double lastMove;
    private double stride = FirstStride;

    public double Watts { get; private set; }

    /// <summary>Begins to settle from where it stands; for when the network has changed.</summary>
    public void Start()
    {
        lowered = 0;
        patience = FirstPatience;
        Forget();
    }

    /// <summary>Forgets where it gained and lost; for when something else has moved.</summary>
    public void Forget()
    {
        (gains, gain, loses, loss) = (0, 0, double.PositiveInfinity, 0);
        moves = 0;
    }

    /// <summary>Goes half of the way back to a power that had an operating point, or to none; <see langword="false"/>: has tried enough.</summary>
    public bool TryLower()
    {
        if (Watts - gains <= Tolerance || lowered >= MostLowered)
            return false;
        if (lowered++ == 0)
            asked = Watts;
        (loses, loss, moves, lastMove) = (Watts, 0, patience, 0);
        Watts = gains + ((loses - gains) / 2);
        return true;
    }

    /// <summary>
    /// Wants more than a power at which there is no operating point leaves room for: what is between is where the solution vanishes.
    /// What it has forgotten since it was lowered corners it no longer.
    /// </summary>
    public bool IsCornered => lowered > 0 && loss == 0 && double.IsFinite(loses) && loses - gains <= Corner * loses;

    /// <summary>Goes back to what <see cref="TryLower"/> began from; <see langword="false"/>: it never did.</summary>
    public bool TryRaise()
    {
        if (lowered == 0)
            return false;
        Watts = asked;
        return true;
    }

    /// <summary>Takes the power that belongs to the present output; <see langword="true"/> when it moved by more than the tolerance.</summary>
    public bool MoveTo(double watts)
    {
        if (watts < None)
            watts = 0;
        var move = watts - Watts;
        if (Math.Abs(move) <= Tolerance)
        {
            (Watts, lastMove, stride) = (watts, 0, FirstStride);
            return false;
        }

        if (TryCloseIn(move))
            return true;
        var share = move / lastMove;
        if (!double.IsFinite(share) || watts <= 0)
        {
            (Watts, lastMove) = (watts, move);
        }
        else
        {
            Watts = Math.Max(0, watts + (share < LargestShare ? move * share / (1 - share) : move * Stride()));
            lastMove = 0; // a plain move shows the next share
        }

        return true;
    }

    /// <summary>Notes what a power came to, and when it has taken long, goes between one that gained and one that lost, by secants and halves.</summary>
    private bool TryCloseIn(double move)
    {
        if (move > 0 && Watts >= gains)
            (gains, gain) = (Watts, move);
        else if (move < 0 && Watts <= loses)
            (loses, loss) = (Watts, move);
        if (gains >= loses || loses - gains <= Tolerance / 2)
        {
            patience *= 2;
            Forget();
        }

        if (++moves <= patience || !double.IsFinite(loses))
            return false;
        var isSecant = moves % 2 == 0 && gain > 0 && loss < 0;
        (Watts, lastMove) = (gains + ((loses - gains) * (isSecant ? gain / (gain - loss) : 0.5)), 0);
        return true;
    }

    private double Stride() => stride = Math.Min(LargestStride, 2 * stride);
}
