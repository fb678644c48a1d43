using Endurance.Studies.Reconciliation;

namespace Endurance.Reports;

/// <summary>Readings beside their predictions as comma-separated text (RFC 4180); measured and deviation are empty where nothing was measured.</summary>
public static class ReconciliationCsv
{
    private const string Header = "point,title,quantity,unit,predicted,tolerance,measured,deviation,verdict";

    /// <summary>A header, then one row a reading, in the order of the card.</summary>
    public static string Write(ReconciliationResult result) => CsvRows.Write(
        Header,
        result.Readings.Select(reading => (string[])
        [
            TestCardReport.Label(reading.Point),
            CsvText.FromPerson(reading.Point.Title),
            CsvText.FromPerson(Wording.Of(reading.Expected)),
            reading.Expected.Unit,
            RoundedNumber.Fixed(reading.Expected.Predicted, 2),
            RoundedNumber.Fixed(reading.Expected.Tolerance, 2),
            CsvText.Number(reading.Measured),
            CsvText.Number(reading.Deviation),
            Wording.Of(reading.Verdict),
        ]));
}
