using Endurance.Studies.Sizing;

namespace Endurance.Reports;

/// <summary>Keys, units and words of what may be sized.</summary>
/// <param name="LimitKey">Of the limit in answers for programs.</param>
/// <param name="ValueKey">Of a value tried.</param>
/// <param name="Unit">Symbol.</param>
/// <param name="PerUnit">SI value of one unit.</param>
/// <param name="Noun">What the limit is, such as "smallest capacity".</param>
/// <param name="Quantity">What is varied, for an axis.</param>
/// <param name="IsSmallest">The least that passes is looked for, otherwise the most.</param>
internal sealed record SizingTerms(string LimitKey, string ValueKey, string Unit, double PerUnit, string Noun, string Quantity, bool IsSmallest = false)
{
    private const double CoulombsPerAmpereHour = 3600;

    public static SizingTerms Of(SizingFind find) => find switch
    {
        SizingFind.Capacity => new("required_capacity_amp_hours", "capacity_amp_hours", "Ah", CoulombsPerAmpereHour, "smallest capacity", "rated capacity", IsSmallest: true),
        SizingFind.Load => new("most_extra_load_amps", "extra_load_amps", "A", 1, "most extra load", "extra load"),
        SizingFind.Delay => new("longest_recognition_delay_minutes", "recognition_delay_minutes", "min", 60, "longest delay of everything the pilot does", "delay of everything the pilot does"),
        SizingFind.ShedTime => new("longest_shed_delay_minutes", "shed_delay_minutes", "min", 60, "longest delay of shedding", "delay of shedding"),
        SizingFind.Health => new("lowest_health_percent", "health_percent", "%", 0.01, "lowest health", "health", IsSmallest: true),
        _ => throw new ArgumentOutOfRangeException(nameof(find), find, "Unknown question."),
    };

    public double InUnit(double si) => si / PerUnit;

    public string WithUnit(double si) => $"{RoundedNumber.Short(InUnit(si), 2)} {Unit}";

    /// <summary>An edge in its unit, rounded towards the values that pass, so that what is told passes too.</summary>
    public double Safe(double si, int decimals)
    {
        var steps = Math.Pow(10, decimals);
        return (IsSmallest ? Math.Ceiling((InUnit(si) * steps) - 1e-6) : Math.Floor((InUnit(si) * steps) + 1e-6)) / steps;
    }

    public string SafeWithUnit(double si, int decimals = 2) => $"{RoundedNumber.Short(Safe(si, decimals), decimals)} {Unit}";
}
