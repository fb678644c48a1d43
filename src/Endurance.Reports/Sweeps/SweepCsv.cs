namespace Endurance.Reports;

/// <summary>A sweep as comma-separated text: a row a value and case.</summary>
public static class SweepCsv
{
    /// <summary>Empty minutes mean not lost within the horizon.</summary>
    public static string Write(SweepResult result) => CsvRows.Write(
        "quantity,unit,value,case,endurance_minutes,lost_first,verdict,chattering",
        result.Points.SelectMany(point => point.Cases.Select(one => (string[])
        [
            CsvText.FromPerson(result.Quantity.Path),
            result.Unit,
            result.Number(point),
            CsvText.FromPerson(one.Name),
            CsvText.Minutes(one.Endurance),
            CsvText.FromPerson(one.LimitedBy ?? ""),
            Wording.Of(one.Verdict),
            CsvText.Chattering(one.BreakOff),
        ])));
}
