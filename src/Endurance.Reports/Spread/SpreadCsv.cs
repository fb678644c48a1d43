using Endurance.Studies.Spread;

namespace Endurance.Reports;

/// <summary>A spread as comma-separated text: a row a case and requirement.</summary>
public static class SpreadCsv
{
    private const string Header = "case,p5_minutes,p50_minutes,p95_minutes,subject,endure_minutes,samples_met,samples,probability,probability_low,probability_high,samples_chattering";

    /// <summary>Empty minutes mean not lost within the horizon; a case without requirements has one row.</summary>
    public static string Write(SpreadResult result) => CsvRows.Write(
        Header,
        result.Cases.SelectMany(one => one.Requirements.IsEmpty
            ? [[.. Minutes(one), "", "", "", Count(result.Options.Samples), "", "", "", Count(one.BrokenOff)]]
            : one.Requirements.Select(judged => (string[])
            [
                .. Minutes(one),
                CsvText.FromPerson(SummaryTable.Subject(judged.Requirement)),
                RoundedNumber.Short(judged.Requirement.Endure.Minutes, 4),
                Count(judged.Met),
                Count(result.Options.Samples),
                RoundedNumber.Short(judged.Share, 6),
                RoundedNumber.Short(judged.Interval.Low, 6),
                RoundedNumber.Short(judged.Interval.High, 6),
                Count(one.BrokenOff),
            ])));

    private static string[] Minutes(SpreadCase one) =>
        [CsvText.FromPerson(one.Name), Quantile(one, 0.05), Quantile(one, 0.5), Quantile(one, 0.95)];

    private static string Quantile(SpreadCase one, double share) => CsvText.Minutes(one.Quantile(share));

    private static string Count(int number) => RoundedNumber.Short(number, 0);
}
