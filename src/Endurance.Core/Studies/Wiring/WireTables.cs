using Endurance.Components;
using Endurance.Library;
using Endurance.Quantities;

namespace Endurance.Studies.Wiring;

/// <summary>The tables as they apply to one branch.</summary>
internal sealed class WireTables(WiringOptions options, AllowableDropRow limits, Protection? protection)
{
    /// <summary>Above the limit by no more than this still passes.</summary>
    /// <remarks>FAA AC 43.13-1B, table 11-7, takes 0.504 V for a run that may drop 0.5 V.</remarks>
    public const double DropTolerance = 0.01;

    public Protection? Protection => protection;

    /// <summary>Conductor temperature that the insulation stands.</summary>
    public Temperature InsulationLimit => Temperature.FromCelsius(options.Insulation switch
    {
        Insulation.Rated105 => 105,
        Insulation.Rated150 => 150,
        _ => 200,
    });

    public static bool Within(Voltage drop, Voltage limit) => drop <= limit * (1 + DropTolerance);

    /// <summary>Continuous current; <see langword="null"/>: the table has no such gauge.</summary>
    public Current? Rating(WireGauge gauge) =>
        options.Bundling == Bundling.FreeAir ? FreeAirRatings.Of(gauge) : WireTable.Row(gauge)?.RatingInBundle(options.Insulation);

    /// <summary>For the kind of protection fitted, or for a breaker where there is none or the chart lists none.</summary>
    public Current? LargestProtection(WireGauge gauge) => protection is { } fitted
        ? ProtectionChart.Largest(gauge, fitted.Kind)
        : ProtectionChart.Largest(gauge, ProtectionKind.Breaker) ?? ProtectionChart.Largest(gauge, ProtectionKind.Fuse);

    /// <summary>Thinnest gauge in which the whole run meets drop, rating and protection chart.</summary>
    public WireGauge? Smallest(WireRun run, BranchCurrent current)
    {
        foreach (var row in WireTable.Rows)
        {
            var other = run.With(row);
            var isProtected = protection is null || LargestProtection(row.Gauge) is not { } largest || protection.Rating <= largest;
            if (isProtected && Rating(row.Gauge) is { } rating && current.Steady <= rating
                && Within(other.Drop(current.Steady), limits.Continuous) && Within(other.Drop(current.Short), limits.Intermittent.Value))
                return row.Gauge;
        }

        return null;
    }
}
