using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Library;
using Endurance.Quantities;

namespace Endurance.Studies.Wiring;

/// <summary>What is wrong or doubtful about one wire.</summary>
internal static class WiringFindings
{
    public static ImmutableArray<Finding> Of(WiringRow row, Temperature ambient) =>
        [.. Drops(row), .. Carrying(row, ambient), .. Protections(row), .. Switches(row)];

    private static IEnumerable<Finding> Drops(WiringRow row)
    {
        var kind = row.IsShortDeciding ? "for a short time" : "continuously";
        var larger = row.SmallestGauge is { } gauge ? $"The smallest gauge that passes is {gauge}." : "No gauge of the table passes: shorten the run or split the load.";
        if (row.Current.Short <= Current.Zero)
        {
            yield return Find(row, "never-carries-current", Severity.Caution, "0 A",
                $"{row.Part} carries no current in any case nor as drawn, so nothing could be judged. Add a case that uses it.");
        }
        else if (!WireTables.Within(row.Drop, row.Limit))
        {
            yield return Find(row, "drop-too-high", Severity.Warning, Volts(row.Drop),
                $"{row.Part} drops {Volts(row.Drop)} at {Amperes(row.Deciding)}; {Volts(row.Limit)} is allowed {kind}. {larger}");
        }
        else if (row.HotConductor is { } hot && row.Current.Steady <= row.Rating && !WireTables.Within(row.Run.DropAt(row.Deciding, hot), row.Limit))
        {
            yield return Find(row, "drop-too-high-when-hot", Severity.Caution, Volts(row.Run.DropAt(row.Deciding, hot)),
                $"{row.Part} drops {Volts(row.Drop)} with its conductor at {Celsius(row.Run.Conductor)}, but {Volts(row.Run.DropAt(row.Deciding, hot))} at the {Celsius(hot)} estimated for its load; {Volts(row.Limit)} is allowed. Measure it hot, or go one gauge up.");
        }
    }

    private static IEnumerable<Finding> Carrying(WiringRow row, Temperature ambient)
    {
        var gauge = row.Run.Thinnest;
        if (row.Rating is not { } rating)
        {
            yield return Find(row, "no-rating", Severity.Caution, gauge.ToString(), $"The table has no current rating for {gauge}; look it up for the wire you use.");
            yield break;
        }

        var steady = row.Current.Steady;
        var byTable = steady <= rating;
        var byChart = row.LargestProtection is { } largest ? steady <= largest : byTable;
        if (!byTable && !byChart)
        {
            yield return Find(row, "current-above-rating", Severity.Warning, Amperes(steady),
                $"{row.Part} carries {Amperes(steady)} continuously; {gauge} is rated {Amperes(rating)}. Use a larger gauge.");
        }
        else if (byTable != byChart)
        {
            yield return Find(row, "tables-disagree", Severity.Caution, Amperes(steady), Disagreement(row, steady, rating, byTable));
        }
        else if (row.Current.Short > rating)
        {
            yield return Find(row, "short-current-above-rating", Severity.Caution, Amperes(row.Current.Short),
                $"{row.Part} carries {Amperes(row.Current.Short)} for a short time, above the continuous {Amperes(rating)} of {gauge}. See that it cannot last.");
        }

        if (ambient > WireTable.RatedAmbient)
        {
            yield return Find(row, "ambient-above-table", Severity.Caution, Celsius(ambient),
                $"The rating of {Amperes(rating)} holds up to {Celsius(WireTable.RatedAmbient)} around the wire; here it is {Celsius(ambient)}. Derate it.");
        }
    }

    private static string Disagreement(WiringRow row, Current steady, Current rating, bool byTable)
    {
        var (lets, stops) = byTable
            ? ($"its rating of {Amperes(rating)}", $"the protection chart, which ends at {Amperes(row.LargestProtection!.Value)} ({ProtectionChart.Source})")
            : ($"the protection chart up to {Amperes(row.LargestProtection!.Value)} ({ProtectionChart.Source})", $"its rating of {Amperes(rating)}");
        return $"{row.Part} carries {Amperes(steady)} in {row.Run.Thinnest}: allowed by {lets}, not by {stops}. The two rest on different bundles and heights; find out which is nearer to your harness, or go one gauge up.";
    }

    private static IEnumerable<Finding> Protections(WiringRow row)
    {
        if (row.Protection is not { } protection)
        {
            yield return Find(row, "wire-unprotected", Severity.Information, "",
                $"{row.Part} has no breaker or fuse of its own. See that each end that can feed it is protected elsewhere, or that it is a short main cable.");
            yield break;
        }

        if (row.LargestProtection is { } largest && protection.Rating > largest)
        {
            yield return Find(row, "protection-above-chart", Severity.Warning, Amperes(protection.Rating),
                $"{Amperes(protection.Rating)} is too large to protect {row.Run.Thinnest}: at most {Amperes(largest)} ({ProtectionChart.Source}). Fit a smaller one or a larger wire.");
        }

        if (row.Current.Steady > protection.Rating)
        {
            yield return Find(row, "protection-below-load", Severity.Caution, Amperes(row.Current.Steady),
                $"{row.Part} carries {Amperes(row.Current.Steady)} continuously through a protection of {Amperes(protection.Rating)}, which will open sooner or later.");
        }
    }

    private static IEnumerable<Finding> Switches(WiringRow row)
    {
        if (row.Switch is not { } need)
            yield break;
        var type = need.Type.ToString().ToLowerInvariant() + (need.IsGuess ? " (a guess from names)" : "");
        yield return Find(row, "switch-rating", Severity.Information, Amperes(need.Rating),
            $"The switch of {row.Part} needs a rating of {Amperes(need.Rating)}, its load taken as {type} ({SwitchDerating.Source}).");
    }

    private static Finding Find(WiringRow row, string code, Severity severity, string value, string message) =>
        new(code, severity, row.Part, value, message);

    private static string Amperes(Current current) => FormattableString.Invariant($"{current.Amperes:0.##} A");

    private static string Volts(Voltage voltage) => FormattableString.Invariant($"{voltage.Volts:0.##} V");

    private static string Celsius(Temperature temperature) => FormattableString.Invariant($"{temperature.Celsius:0.#} degC");
}
