using System.Text;
using Endurance.Studies.BatteryFit;

namespace Endurance.Reports;

/// <summary>A fitted battery as lines for the <c>batteries</c> of a scenario.</summary>
public static class BatteryFragment
{
    private const int Decimals = 4;

    /// <summary>YAML, indented to stand under <c>batteries:</c>; every line ends with a line feed.</summary>
    /// <param name="log">Name of the log.</param>
    /// <param name="result">Its fit.</param>
    public static string Write(string log, BatteryFitResult result)
    {
        var battery = result.Written;
        var text = new StringBuilder();
        void Line(string line) => text.Append(line).Append('\n');
        Line($"  # Fitted to {VisibleText.Of(log)}, {FitText.Fitted(result)}, down to {FitText.Volts(result.EndVoltages[^1])}. Change the name and the bus.");
        Line($"  {battery.Name}:");
        Line($"    bus: {battery.Bus}");
        Line($"    capacity: {Number(battery.RatedCapacity.AmpereHours)} Ah");
        Line($"    rate: {Number(battery.Rate.Hours)} h");
        if (battery.Health < 1 || battery.Health > 1)
            Line($"    health: {Number(battery.Health * 100)} %");
        Line($"    peukert: {Number(battery.PeukertExponent)}{(result.Law.IsExponentMeasured ? "" : FitText.ExponentRemark(result))}");
        Line($"    resistance: {Number(result.Resistance.Ohms * 1e3)} mohm{(result.IsResistanceKnown ? "" : "  # not measured: the table below holds the drop")}");
        Line("    emf:");
        for (var i = 0; i < battery.Emf.X.Length; i++)
            Line($"      - [{Number(battery.Emf.X[i] * 100)} %, {Number(battery.Emf.Y[i])} V]");
        return text.ToString();
    }

    private static string Number(double value) => RoundedNumber.Short(value, Decimals);
}
