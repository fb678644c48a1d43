using System.Text;
using Endurance.Studies.Reconciliation;

namespace Endurance.Reports;

/// <summary>Measured loads as an overlay of their scenario.</summary>
public static class MeasuredOverlay
{
    /// <summary>YAML; every line ends with a line feed.</summary>
    /// <param name="scenario">Name of its file.</param>
    /// <param name="card">Name of the card's file.</param>
    /// <param name="result">Each of its loads with a date.</param>
    public static string Write(string scenario, string card, ReconciliationResult result)
    {
        var text = new StringBuilder();
        text.Append("# Loads of ").Append(VisibleText.Of(scenario)).Append(" as measured on the ground, from ").Append(VisibleText.Of(card)).Append(".\n");
        text.Append("# It changes these keys and no other; lay it over the scenario:\n#\n");
        text.Append("#   endurance run ").Append(VisibleText.Of(scenario)).Append(" --overlay measured.yaml\n\n");
        text.Append(result.Loads.IsEmpty ? "loads: {}\n" : "loads:\n");
        foreach (var load in result.Loads)
            text.Append("  ").Append(Key(load.Drawn.Name)).Append(": {").Append(Keys(load)).Append("}\n");
        return text.ToString();
    }

    /// <summary>A draw that reads as it was written stays as it was written.</summary>
    private static string Keys(MeasuredLoad load)
    {
        var demand = load.Measured.Demand;
        var draw = load.IsAsDrawn ? "" : $"{DemandText.Key(demand)}: {DemandText.Value(demand)}, ";
        return $"{draw}basis: measured{(load.Measured.MeasuredOn is { } date ? $", measured_on: {CellText.Date(date)}" : "")}";
    }

    /// <summary>Names are letters, digits, blanks, _ and -; YAML takes some of them for something else at the start or alone.</summary>
    private static string Key(string name) =>
        char.IsAsciiLetter(name[0]) && name.All(letter => char.IsAsciiLetterOrDigit(letter) || letter is '_' or '-') && name is not "null" ? name : $"'{name}'";
}
