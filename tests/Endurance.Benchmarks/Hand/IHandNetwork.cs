namespace Endurance.Benchmarks.Hand;

/// <summary>A network of two batteries, written out for one case alone.</summary>
internal interface IHandNetwork
{
    /// <summary>Solves the network for two charges and gives their change a second.</summary>
    void Evaluate(double t, double z1, double z2, out double rate1, out double rate2);

    /// <summary>Whether any event is due at two charges, and at the currents and the voltage last evaluated.</summary>
    bool IsAnyDue(double z1, double z2);

    /// <summary>Signal of an event by number, falling below zero where it is due; of the voltage and currents last evaluated.</summary>
    double Guard(int index, double z1, double z2);

    /// <summary>Lets an event happen; <see langword="true"/>: it was the cutoff.</summary>
    bool Pass(int index);

    /// <summary>Seconds to the nearest knot of a table.</summary>
    double ToKnot(double z1, double z2, double rate1, double rate2);
}
