using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;

namespace Endurance.Reports;

/// <summary>What became of every load in every case, as comma-separated text (RFC 4180).</summary>
/// <remarks>An empty cell of minutes means not within <c>horizon_minutes</c>.</remarks>
public static class FailureCaseCsv
{
    private const string Header =
        "case,case_verdict,case_endurance_minutes,load,bus,essential,was_connected,minutes_powered,minutes_lost_for_good,lost_because,minutes_shed,horizon_minutes,chattering";

    /// <summary>A header, then one row a case and load.</summary>
    public static string Write(Scenario scenario, ImmutableArray<CaseResult> cases)
    {
        var loads = scenario.Loads.ToDictionary(load => load.Name, StringComparer.Ordinal);
        return CsvRows.Write(
            Header,
            cases.SelectMany(result => result.Run.Loads.Select(outcome => (string[])
            [
                CsvText.FromPerson(result.Name),
                Wording.Of(result.Verdict),
                CsvText.Minutes(result.Endurance),
                CsvText.FromPerson(outcome.Name),
                CsvText.FromPerson(loads[outcome.Name].Bus),
                CsvText.YesNo(loads[outcome.Name].IsEssential),
                CsvText.YesNo(outcome.WasConnected),
                CsvText.Minutes(outcome.TimePowered),
                CsvText.Minutes(outcome.TimeLostForGood),
                outcome.LostBecause is { } reason ? Wording.Of(reason) : "",
                CsvText.Minutes(outcome.TimeShed),
                CsvText.Minutes(scenario.Horizon),
                CsvText.Chattering(result.BreakOff),
            ])));
    }
}
