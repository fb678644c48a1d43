using System.Collections.Immutable;
using System.Text;
using Endurance.Studies.LayoutComparison;

namespace Endurance.Reports;

/// <summary>Layouts side by side as comma-separated text (RFC 4180); empty minutes mean not lost within the horizon.</summary>
public static class LayoutCsv
{
    private const string Header =
        "layout,case,verdict,endurance_minutes,limited_by,start_volts,end_volts,highest_diode_watts,highest_junction_degc,findings,parts,single_failures_survived,single_failures_tried";

    /// <summary>A header, then one row a layout and case.</summary>
    public static string Write(ImmutableArray<LayoutResult> layouts)
    {
        var text = new StringBuilder(Header).Append(CsvText.LineEnd);
        foreach (var layout in layouts)
        {
            foreach (var one in layout.Cases)
            {
                text.AppendJoin(
                    ',',
                    CsvText.FromPerson(layout.Name),
                    CsvText.FromPerson(one.Result.Name),
                    Wording.Of(one.Result.Verdict),
                    Number(one.Result.Endurance?.Minutes),
                    CsvText.FromPerson(one.Result.LimitedBy ?? ""),
                    Number(one.StartVoltage?.Volts),
                    Number(one.EndVoltage?.Volts),
                    Number(one.HighestDiodePower?.Watts),
                    Number(one.HighestJunction?.Celsius),
                    Number(one.Result.Findings.Length),
                    Number(layout.Parts),
                    Number(layout.FailuresSurvived),
                    Number(layout.FailuresTried)).Append(CsvText.LineEnd);
            }
        }

        return text.ToString();
    }

    private static string Number(double? value) => value is { } number ? RoundedNumber.Short(number, 4) : "";
}
