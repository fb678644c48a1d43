using Endurance.Studies.Wiring;

namespace Endurance.Reports;

/// <summary>Judged wires as comma-separated text (RFC 4180); an empty cell where the tables are silent.</summary>
public static class WiringCsv
{
    private const string Header =
        "part,gauge,run_feet,amps,steady_amps,short_amps,current_from,drop_volts,limit_volts,longest_run_feet,conductor_degc,rating_amps,"
        + "protection_amps,largest_protection_amps,switch_amps,load_type,smallest_gauge,verdict,findings";

    /// <summary>A header, then one row a wire.</summary>
    public static string Write(WiringResult result) => CsvRows.Write(
        Header,
        result.Rows.Select(row => (string[])
        [
            CsvText.FromPerson(row.Part),
            row.Run.Gauge.ToString(),
            CsvText.Number(row.Run.Length.Feet),
            CsvText.Number(row.Deciding.Amperes),
            CsvText.Number(row.Current.Steady.Amperes),
            CsvText.Number(row.Current.Short.Amperes),
            row.Current.Source == CurrentSource.Simulated ? "simulated" : "stated",
            CsvText.Number(row.Drop.Volts),
            CsvText.Number(row.Limit.Volts),
            CsvText.Number(row.LongestRun?.Feet),
            CsvText.Number(row.HotConductor?.Celsius),
            CsvText.Number(row.Rating?.Amperes),
            CsvText.Number(row.Protection?.Rating.Amperes),
            CsvText.Number(row.LargestProtection?.Amperes),
            CsvText.Number(row.Switch?.Rating.Amperes),
            row.Switch is { } need ? Wording.Of(need.Type) : "",
            row.SmallestGauge?.ToString() ?? "",
            Wording.Of(row.Verdict),
            string.Join(' ', row.Findings.Select(finding => finding.Code)),
        ]));
}
