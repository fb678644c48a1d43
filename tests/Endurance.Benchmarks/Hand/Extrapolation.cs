namespace Endurance.Benchmarks.Hand;

/// <summary>The straight line through the last two solutions, to start the next solve from.</summary>
internal struct Extrapolation
{
    /// <summary>Times the spacing of the two solutions that the line is trusted beyond them; they can be very close after an event.</summary>
    private const double Farthest = 5;

    private double newer;
    private double older;
    private double newerTime;
    private double olderTime;

    public Extrapolation(double start)
    {
        newer = older = start;
        newerTime = olderTime = double.NegativeInfinity;
    }

    public readonly double At(double t)
    {
        var share = (t - newerTime) / (newerTime - olderTime);
        return Math.Abs(share) <= Farthest ? newer + (share * (newer - older)) : newer;
    }

    public void Keep(double t, double value)
    {
        if (t != newerTime)
            (older, olderTime, newerTime) = (newer, newerTime, t);
        newer = value;
    }
}
