namespace Endurance.Simulation;

/// <summary>The input power of a charger, which follows its output from one solve of the network to the next.</summary>
/// <remarks>
/// Where a charger feeds its own input by way of the network, each solve leaves a share of the last move. Below one, every other
/// move goes to the sum of that geometric series (Aitken 1926); from there on the power runs away from where it is, and long
/// strides bring it to where something limits it.
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

    private double lastMove;
    private double stride = FirstStride;

    public double Watts { get; private set; }

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

    private double Stride() => stride = Math.Min(LargestStride, 2 * stride);
}
