using System.Collections.Immutable;
using System.Text;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;

namespace Endurance.Reports;

/// <summary>What became of every load in every case, as comma-separated text (RFC 4180).</summary>
/// <remarks>An empty cell of minutes means not within <c>horizon_minutes</c>.</remarks>
public static class CsvReport
{
    private const string Header =
        "case,case_verdict,case_endurance_minutes,load,bus,essential,was_connected,minutes_powered,minutes_lost_for_good,lost_because,minutes_shed,horizon_minutes,chattering";

    /// <summary>A header, then one row a case and load.</summary>
    public static string Write(Scenario scenario, ImmutableArray<CaseResult> cases)
    {
        var loads = scenario.Loads.ToDictionary(load => load.Name, StringComparer.Ordinal);
        var text = new StringBuilder(Header).Append(CsvText.LineEnd);
        foreach (var result in cases)
        {
            foreach (var outcome in result.Run.Loads)
            {
                var load = loads[outcome.Name];
                text.AppendJoin(
                    ',',
                    CsvText.FromPerson(result.Name),
                    Wording.Of(result.Verdict),
                    Minutes(result.Endurance),
                    CsvText.FromPerson(outcome.Name),
                    CsvText.FromPerson(load.Bus),
                    YesNo(load.IsEssential),
                    YesNo(outcome.WasConnected),
                    Minutes(outcome.TimePowered),
                    Minutes(outcome.TimeLostForGood),
                    outcome.LostBecause is { } reason ? Wording.Of(reason) : "",
                    Minutes(outcome.TimeShed),
                    Minutes(scenario.Horizon),
                    CsvText.Chattering(result.Chatter)).Append(CsvText.LineEnd);
            }
        }

        return text.ToString();
    }

    private static string Minutes(Duration? time) => time is { } reached ? RoundedNumber.Short(reached.Minutes, 4) : "";

    private static string YesNo(bool value) => value ? "yes" : "no";
}
