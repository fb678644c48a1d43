using System.Collections.Immutable;
using Endurance.Quantities;

namespace Endurance.Library;

/// <summary>Voltage that a wire run may lose between a bus and the equipment's ground.</summary>
public static class AllowableDrop
{
    /// <summary>Where the continuous column comes from; the intermittent one is from memory.</summary>
    public const string Source = "FAA AC 43.13-1B, table 11-6, by the limits printed in tables 11-7 and 11-8, page 11-22";

    /// <summary>From the lowest voltage to the highest.</summary>
    public static ImmutableArray<AllowableDropRow> Rows { get; } = [Row(14, 0.5, 1), Row(28, 1, 2), Row(115, 4, 8), Row(200, 7, 14)];

    /// <summary><see langword="null"/> for a voltage that the table does not list.</summary>
    public static AllowableDropRow? At(Voltage nominal) => Rows.FirstOrDefault(row => row.Nominal == nominal);

    /// <summary>The row of the table, or the nearest below in proportion, as behind a converter that gives 5 V: the rows keep nearly one ratio.</summary>
    public static AllowableDropRow For(Voltage nominal)
    {
        if (At(nominal) is { } listed)
            return listed;
        var near = Rows.LastOrDefault(row => row.Nominal < nominal) ?? Rows[0];
        var ratio = nominal / near.Nominal;
        return new(nominal, near.Continuous * ratio, near.Intermittent with { Value = near.Intermittent.Value * ratio });
    }

    private static AllowableDropRow Row(double nominal, double continuous, double intermittent) => new(
        Voltage.FromVolts(nominal), Voltage.FromVolts(continuous), new(Voltage.FromVolts(intermittent), Sourced<Voltage>.FromMemory));
}
