using System.Globalization;
using Endurance.Quantities;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;

namespace Endurance.Reports;

/// <summary>How numbers read in tables: minutes with one decimal, so that a finer solver tolerance changes nothing printed.</summary>
internal static class CellText
{
    /// <summary>Stands for "does not apply".</summary>
    public const string Absent = "-";

    /// <summary>Stands for what a case that could not be computed to its end would have told.</summary>
    public const string NotKnown = "not known";

    public static string Minutes(Duration time) => RoundedNumber.Fixed(time.Minutes, 1);

    public static string MinutesOr(Duration? time, string absent) => time is { } reached ? Minutes(reached) : absent;

    /// <summary>As <see cref="MinutesWithin(Duration?, Duration)"/>; what was not reached before a break-off is not known.</summary>
    public static string MinutesWithin(Duration? time, Duration horizon, BreakOff? breakOff) =>
        IsKnown(time, breakOff) ? MinutesWithin(time, horizon) : NotKnown;

    /// <summary>What was lost first at a time; what was not lost before a break-off is not known.</summary>
    public static string LostFirst(string? part, Duration? time, BreakOff? breakOff) => IsKnown(time, breakOff) ? part ?? "nothing" : NotKnown;

    /// <summary>Whether a time, or that it was not reached, was known before a break-off.</summary>
    public static bool IsKnown(Duration? time, BreakOff? breakOff) => breakOff is null || time < breakOff.Time;

    /// <summary>A round number of minutes as a person would say it: 30, 37.5.</summary>
    public static string RoundMinutes(Duration time) => RoundedNumber.Short(time.Minutes, 1);

    /// <summary>The minutes, or <c>more than</c> the span that was simulated.</summary>
    public static string MinutesWithin(Duration? time, Duration horizon) =>
        time is { } reached ? Minutes(reached) : "more than " + RoundMinutes(horizon);

    /// <summary>What is left over a requirement, signed; a shortfall too small to show is still shown as one.</summary>
    private static string Margin(Duration? endurance, Duration endure, Duration horizon)
    {
        if (endurance is not { } reached)
            return "more than " + RoundMinutes(horizon - endure);
        var minutes = (reached - endure).Minutes;
        var rounded = RoundedNumber.Fixed(Math.Abs(minutes), 1);
        if (minutes < 0)
            return rounded is "0.0" ? "short by < 0.1" : "-" + rounded;
        return "+" + rounded;
    }

    /// <summary>That of a requirement in a case; a case that breaks off fails with any.</summary>
    public static string Margin(CaseResult result, RequirementResult judged, Duration horizon) =>
        result.BreakOff is null ? Margin(judged.Endurance, judged.Requirement.Endure, horizon) : NotKnown;

    public static string Volts(Voltage voltage) => RoundedNumber.Fixed(voltage.Volts, 2);

    public static string Amperes(Current current) => RoundedNumber.Fixed(current.Amperes, 2);

    /// <summary>Year first, so that no day can be read as a month.</summary>
    public static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    public static string Percent(double fraction) => RoundedNumber.Fixed(fraction * 100, 1);

    /// <summary>The verdict of a case, with the word for one that could not be run to its end.</summary>
    public static ReportCell Judged(CaseResult result) => Judged(result.Verdict, result.BreakOff);

    public static ReportCell Judged(Verdict verdict, BreakOff? breakOff) => breakOff?.Cause switch
    {
        null => Judged(verdict),
        BreakOffCause.Chattering => new("FAIL, chatters", CellTone.Bad),
        BreakOffCause.TooStiff => new("FAIL, too stiff", CellTone.Bad),
        _ => new("FAIL, not solved", CellTone.Bad),
    };

    public static ReportCell Judged(Verdict verdict) => verdict switch
    {
        Verdict.Pass => new("PASS", CellTone.Good),
        Verdict.Fail => new("FAIL", CellTone.Bad),
        _ => new("none asked"),
    };
}
