using Endurance.Components;

namespace Endurance.Reports;

/// <summary>A draw as a scenario writes it.</summary>
internal static class DemandText
{
    /// <summary>As many as a measured draw is rounded to.</summary>
    private const int Decimals = 5;

    /// <summary>The key of the scenario.</summary>
    public static string Key(Demand demand) => demand switch
    {
        ConstantCurrent => "current",
        ConstantPower => "power",
        ConstantResistance => "resistance",
        _ => throw new ArgumentOutOfRangeException(nameof(demand), demand, "Unknown kind of demand."),
    };

    /// <summary>Amperes, watts or ohms.</summary>
    public static double Number(Demand demand) => demand switch
    {
        ConstantCurrent current => current.Current.Amperes,
        ConstantPower power => power.Power.Watts,
        ConstantResistance resistance => resistance.Resistance.Ohms,
        _ => throw new ArgumentOutOfRangeException(nameof(demand), demand, "Unknown kind of demand."),
    };

    public static string Unit(Demand demand) => demand switch
    {
        ConstantCurrent => "A",
        ConstantPower => "W",
        _ => "ohm",
    };

    /// <summary>Number and unit.</summary>
    public static string Value(Demand demand) => $"{RoundedNumber.Short(Number(demand), Decimals)} {Unit(demand)}";
}
