using System.Globalization;

namespace Endurance.Simulation;

/// <summary>The network solver did not reach its accuracy. No number of the network is to be used; <see cref="Simulator"/> makes a <see cref="BreakOff"/> of it.</summary>
internal sealed class UnsolvedNetworkException : Exception
{
    public UnsolvedNetworkException(string bus, double residualAmperes)
        : this(
            bus,
            string.Create(CultureInfo.InvariantCulture, $"{residualAmperes:G3} A do not balance at {bus}"),
            "Look there for a value far out of proportion; without one it is a fault of this program.")
    {
    }

    private UnsolvedNetworkException(string bus, string reason, string remedy)
        : base($"The network was not solved: {reason}. {remedy}") => (Bus, Reason, Remedy) = (bus, reason, remedy);

    /// <summary>Chargers in a circle, or one beside a diode that its output heats and cools, can chase each other without end.</summary>
    public static UnsolvedNetworkException OfChargers(string charger, string bus) =>
        new(bus, $"what {charger} takes at {bus} does not settle, because what chargers give comes back to what feeds them", "Switch one of them off.");

    /// <summary>The bus with the largest imbalance.</summary>
    public string Bus { get; }

    /// <summary>A clause without an end.</summary>
    public string Reason { get; }

    /// <summary>What to change; a sentence.</summary>
    public string Remedy { get; }
}
