namespace Endurance.Simulation;

/// <summary>The voltages on their way down to an operating point, or away.</summary>
/// <remarks>
/// Constant power held at its last currents makes a network that always has a solution, and the voltages can only fall from
/// one such solution to the next: none of the currents taken grows with another bus's voltage.
/// </remarks>
internal sealed class VoltageFall
{
    /// <summary>Amperes by which a bus may seem to get more than it gives.</summary>
    private const double Slack = 1e-9;

    private const double Longest = 1 << 20;

    private readonly NetworkEquations equations;
    private readonly double[] last;
    private readonly double[] next;
    private readonly double[] step;

    public VoltageFall(NetworkEquations equations)
    {
        this.equations = equations;
        last = new double[equations.Volts.Length];
        next = new double[last.Length];
        step = new double[last.Length];
    }

    /// <summary>Starts from voltages above every operating point.</summary>
    public void Begin(double[] volts) => volts.CopyTo(last, 0);

    /// <summary>
    /// Goes on from the last voltages through the present ones, twice as far each time, for as long as every bus gives more
    /// than it gets and would go on falling.
    /// </summary>
    public void Lengthen()
    {
        var volts = equations.Volts;
        for (var i = 0; i < step.Length; i++)
            step[i] = last[i] - volts[i];
        volts.CopyTo(next, 0);
        for (var length = 2.0; length <= Longest; length *= 2)
        {
            for (var i = 0; i < step.Length; i++)
                volts[i] = last[i] - (length * step[i]);
            equations.Assemble();
            if (equations.HasRunAway() || !IsFalling())
                break;
            volts.CopyTo(next, 0);
        }

        next.CopyTo(last, 0);
        Resume();
    }

    /// <summary>Puts the voltages reached back, after an attempt to solve from there.</summary>
    public void Resume() => last.CopyTo(equations.Volts, 0);

    private bool IsFalling()
    {
        foreach (var amperes in equations.Residual)
        {
            if (!(amperes >= -Slack))
                return false;
        }

        return true;
    }
}
