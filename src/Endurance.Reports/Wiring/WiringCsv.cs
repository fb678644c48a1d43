using System.Text;
using Endurance.Studies.Wiring;

namespace Endurance.Reports;

/// <summary>Judged wires as comma-separated text (RFC 4180); an empty cell where the tables are silent.</summary>
public static class WiringCsv
{
    private const string Header =
        "part,gauge,run_feet,amps,steady_amps,short_amps,current_from,drop_volts,limit_volts,longest_run_feet,conductor_degc,rating_amps,"
        + "protection_amps,largest_protection_amps,switch_amps,load_type,smallest_gauge,verdict,findings";

    /// <summary>A header, then one row a wire.</summary>
    public static string Write(WiringResult result)
    {
        var text = new StringBuilder(Header).Append(CsvText.LineEnd);
        foreach (var row in result.Rows)
        {
            text.AppendJoin(
                ',',
                CsvText.FromPerson(row.Part),
                row.Run.Gauge.ToString(),
                Number(row.Run.Length.Feet),
                Number(row.Deciding.Amperes),
                Number(row.Current.Steady.Amperes),
                Number(row.Current.Short.Amperes),
                row.Current.Source == CurrentSource.Simulated ? "simulated" : "stated",
                Number(row.Drop.Volts),
                Number(row.Limit.Volts),
                Number(row.LongestRun?.Feet),
                Number(row.HotConductor?.Celsius),
                Number(row.Rating?.Amperes),
                Number(row.Protection?.Rating.Amperes),
                Number(row.LargestProtection?.Amperes),
                Number(row.Switch?.Rating.Amperes),
                row.Switch is { } need ? Wording.Of(need.Type) : "",
                row.SmallestGauge?.ToString() ?? "",
                Wording.Of(row.Verdict),
                string.Join(' ', row.Findings.Select(finding => finding.Code))).Append(CsvText.LineEnd);
        }

        return text.ToString();
    }

    private static string Number(double? value) => value is { } number ? RoundedNumber.Short(number, 4) : "";
}
