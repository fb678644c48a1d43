using System.Collections.Immutable;
using Endurance.Studies.LayoutComparison;

namespace Endurance.Reports;

/// <summary>Layouts side by side as comma-separated text (RFC 4180); empty minutes mean not lost within the horizon.</summary>
public static class LayoutCsv
{
    private const string Header =
        "layout,case,verdict,endurance_minutes,limited_by,start_volts,end_volts,highest_diode_watts,highest_junction_degc,findings,parts,single_failures_survived,single_failures_tried";

    /// <summary>A header, then one row a layout and case.</summary>
    public static string Write(ImmutableArray<LayoutResult> layouts) => CsvRows.Write(
        Header,
        layouts.SelectMany(layout => layout.Cases.Select(one => (string[])
        [
            CsvText.FromPerson(layout.Name),
            CsvText.FromPerson(one.Result.Name),
            Wording.Of(one.Result.Verdict),
            CsvText.Number(one.Result.Endurance?.Minutes),
            CsvText.FromPerson(one.Result.LimitedBy ?? ""),
            CsvText.Number(one.StartVoltage?.Volts),
            CsvText.Number(one.EndVoltage?.Volts),
            CsvText.Number(one.HighestDiodePower?.Watts),
            CsvText.Number(one.HighestJunction?.Celsius),
            CsvText.Number(one.Result.Findings.Length),
            CsvText.Number(layout.Parts),
            CsvText.Number(layout.FailuresSurvived),
            CsvText.Number(layout.FailuresTried),
        ])));
}
