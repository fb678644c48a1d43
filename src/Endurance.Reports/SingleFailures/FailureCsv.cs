using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Studies.SingleFailures;

namespace Endurance.Reports;

/// <summary>Failures as comma-separated text, with the minutes of every essential load.</summary>
public static class FailureCsv
{
    /// <summary>A header, then a row a failure and case; empty minutes mean not lost within the horizon.</summary>
    public static string Write(Scenario scenario, ImmutableArray<FailureRow> rows) => CsvRows.Write(
        string.Join(',', [
            "part", "mode", "case", "endurance_minutes", "verdict", "lost", "hidden", "revealed_by", "chattering",
            .. scenario.EssentialLoads.Select(load => CsvText.FromPerson(load + "_minutes"))]),
        rows.Select(row => (IEnumerable<string>)
        [
            CsvText.FromPerson(row.Part),
            row.Mode,
            CsvText.FromPerson(row.Case),
            CsvText.Minutes(row.Endurance),
            Wording.Of(row.Verdict),
            CsvText.FromPerson(string.Join(' ', row.Lost)),
            CsvText.YesNo(row.IsHidden),
            CsvText.FromPerson(row.RevealedBy),
            CsvText.Chattering(row.BreakOff),
            .. row.Loads.Select(CsvText.Minutes),
        ]));
}
