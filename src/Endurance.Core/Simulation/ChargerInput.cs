namespace Endurance.Simulation;

/// <summary>The input power of a charger, which follows its output from one solve of the network to the next.</summary>
/// <remarks>
/// Where a charger feeds its own input by way of the network, each solve brings the power nearer by the same share. Every
/// other move goes to the sum of that geometric series (Aitken 1926).
/// </remarks>
internal sealed class ChargerInput
{
    /// <summary>Watts within which it counts as settled.</summary>
    private const double Tolerance = 1e-8;

    /// <summary>Share of the last move that is left, above which no sum is trusted.</summary>
    private const double LargestShare = 0.98;

    private double lastMove;

    public double Watts { get; private set; }

    /// <summary>Takes the power that belongs to the present output; <see langword="true"/> when it moved by more than the tolerance.</summary>
    public bool MoveTo(double watts)
    {
        var move = watts - Watts;
        var share = move / lastMove;
        var isSeries = Math.Abs(share) < LargestShare && watts > 0;
        var moved = Math.Abs(move) > Tolerance;
        Watts = moved && isSeries ? Math.Max(0, watts + (move * share / (1 - share))) : watts;
        lastMove = moved && !isSeries ? move : 0; // two plain moves make the next series
        return moved;
    }
}
