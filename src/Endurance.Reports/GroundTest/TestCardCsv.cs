using Endurance.Studies.GroundTest;

namespace Endurance.Reports;

/// <summary>A ground test as a table to fill in, a row a reading.</summary>
public static class TestCardCsv
{
    private const string Header = "point,title,quantity,unit,predicted,tolerance,measured,remarks";

    /// <summary>The text that names a point, as T7.</summary>
    public static string Label(TestPoint point) => TestCardReport.Label(point);

    /// <summary>The text that names a reading of a point.</summary>
    public static string Quantity(ExpectedReading reading) => Wording.Of(reading);

    /// <summary>RFC 4180: comma-separated, lines end with CR LF; measured and remarks are empty.</summary>
    public static string Write(GroundTestPlan plan) => CsvRows.Write(
        Header,
        plan.Points.SelectMany(point => point.Readings.Select(reading => (string[])
        [
            Label(point),
            CsvText.FromPerson(point.Title),
            CsvText.FromPerson(Quantity(reading)),
            reading.Unit,
            RoundedNumber.Fixed(reading.Predicted, 2),
            RoundedNumber.Fixed(reading.Tolerance, 2),
            "",
            "",
        ])));
}
