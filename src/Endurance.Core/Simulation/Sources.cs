namespace Endurance.Simulation;

/// <summary>Questions about all sources together.</summary>
internal static class Sources
{
    /// <summary>Highest EMF, set-point or charger output of a working source in volts; at least 1 V.</summary>
    public static double Highest(CompiledNetwork network, RunState run, double[] batteryEmf)
    {
        var highest = 1.0;
        for (var i = 0; i < network.Batteries.Length; i++)
        {
            if (run.IsJoined(i))
                highest = Math.Max(highest, batteryEmf[i]);
        }

        for (var i = 0; i < network.Alternators.Length; i++)
        {
            if (run.Generates(i))
                highest = Math.Max(highest, network.Alternators[i].Setpoint);
        }

        for (var i = 0; i < network.Chargers.Length; i++)
        {
            if (run.Charges(i))
                highest = Math.Max(highest, network.Chargers[i].Output);
        }

        return highest;
    }
}
