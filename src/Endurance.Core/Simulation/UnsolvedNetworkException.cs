namespace Endurance.Simulation;

/// <summary>The network solver did not reach its accuracy. A fault of this program, unless its message says what to change; no number of the run is to be used.</summary>
public sealed class UnsolvedNetworkException : Exception
{
    public UnsolvedNetworkException(string bus, double residualAmperes)
        : base(string.Create(System.Globalization.CultureInfo.InvariantCulture,
            $"The network was not solved: {residualAmperes:G3} A do not balance at {bus}."))
    {
        Bus = bus;
    }

    private UnsolvedNetworkException(string bus, string message)
        : base(message) => Bus = bus;

    /// <summary>Chargers that feed each other in a circle can chase each other without end.</summary>
    public static UnsolvedNetworkException OfChargers(string charger, string bus) =>
        new(bus, $"The network was not solved: what {charger} takes at {bus} does not settle, because chargers feed each other in a circle. Switch one of them off.");

    /// <summary>The bus with the largest imbalance.</summary>
    public string Bus { get; }
}
