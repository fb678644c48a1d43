using Endurance.Studies.Sizing;

namespace Endurance.Reports;

/// <summary>Every value a sizing tried, as comma-separated text.</summary>
public static class SizingCsv
{
    /// <summary>A header, then a row a value; empty minutes mean not lost within the horizon.</summary>
    public static string Write(SizingAnswer answer)
    {
        var terms = SizingTerms.Of(answer.Question.Find);
        return CsvRows.Write(
            terms.ValueKey + ",endurance_minutes,required_minutes,case,lost_first,verdict,chattering",
            answer.Limit.Curve.Select(trial => (string[])
            [
                RoundedNumber.Short(terms.InUnit(trial.Value), 4),
                CsvText.Minutes(trial.Endurance),
                CsvText.Minutes(trial.Required),
                CsvText.FromPerson(trial.Case),
                CsvText.FromPerson(trial.LimitedBy ?? ""),
                trial.Passes ? "pass" : "fail",
                CsvText.Chattering(trial.BreakOff),
            ]));
    }
}
