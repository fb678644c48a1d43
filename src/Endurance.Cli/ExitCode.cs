using Endurance.Simulation;

namespace Endurance.Cli;

/// <summary>What the program tells its caller.</summary>
internal static class ExitCode
{
    /// <summary>Every requirement is met, or there was none.</summary>
    public const int Met = 0;

    /// <summary>A requirement is not met in some case, or a capacity test fails.</summary>
    public const int NotMet = 1;

    /// <summary>The scenario, the log, the command line or the place to write to is wrong.</summary>
    public const int Usage = 2;

    /// <summary>The program itself failed.</summary>
    public const int Failed = 3;

    /// <summary>Stopped by Ctrl-C or SIGTERM; 128 and the number of SIGINT, as shells count.</summary>
    public const int Interrupted = 130;

    /// <summary>Where a case could not be computed to its end: mostly for what the scenario asks, but an unsolved network is a failure of the program.</summary>
    public static int Of(BreakOff breakOff) => breakOff.Cause == BreakOffCause.Unsolved ? Failed : Usage;
}
