using System.Collections.Immutable;
using Endurance.Scenarios;
using Endurance.Studies.BatteryCurves;
using static Endurance.Reports.StudyBlocks;

namespace Endurance.Reports;

/// <summary>How long batteries last at constant currents, for people.</summary>
public static class BatteryCurveReport
{
    /// <summary>A table a battery, and what is doubtful about its ratings.</summary>
    public static ReportDocument Describe(Scenario scenario, ImmutableArray<BatteryCurve> curves) => new(
        scenario.Title,
        [
            .. curves.SelectMany(curve => Blocks(scenario, curve)),
            .. Closing,
        ]);

    /// <summary>Temperature and health in words.</summary>
    internal static string Condition(BatteryCurve curve) =>
        $"{RoundedNumber.Short(curve.Battery.Temperature.Celsius, 1)} degC, health {RoundedNumber.Short(curve.Battery.Health * 100, 1)} %";

    /// <summary>Where the minutes end, in words.</summary>
    internal static string End(BatteryCurve curve) => curve.EndVoltage is { } volts ? $"to {RoundedNumber.Short(volts.Volts, 3)} V" : "to exhaustion";

    /// <summary>One battery, from its heading on.</summary>
    internal static IEnumerable<ReportBlock> Blocks(Scenario scenario, BatteryCurve curve)
    {
        var name = curve.Battery.Name;
        yield return new ReportHeading($"Battery {name}");
        yield return new ReportParagraph($"Minutes {End(curve)} at constant currents, from full. Now: {Condition(curve)}. {Law(curve)}");
        yield return new ReportTable(
            "Minutes over current",
            [new("current", "A"), new("now", "min"), new("now, kinetic model", "min"), new("new and warm", "min"), new("stated", "min")],
            [.. curve.Rows.Select(row => Row(
                RoundedNumber.Short(row.Current.Amperes, 3),
                CellText.Minutes(row.Lasts),
                CellText.MinutesOr(row.LastsKinetic, CellText.Absent),
                CellText.Minutes(row.LastsNew),
                CellText.MinutesOr(row.Given, CellText.Absent)))]);
        if (!curve.RatingChecks.IsEmpty)
            yield return Checks(curve);
        if (curve.RatingChecks.Where(check => check.ChargeLeft > RatingCheck.MostLeft).Select(Warning).ToImmutableArray() is { IsEmpty: false } warnings)
            yield return new ReportList("Warnings", warnings);
        if (curve.Battery.KineticWells is not null && curve.Battery.TypedWells is null)
            yield return new ReportParagraph(Wells(curve));
        var assumed = scenario.Assumptions.Where(assumption => string.Equals(assumption.Part, name, StringComparison.Ordinal)).ToImmutableArray();
        if (!assumed.IsEmpty)
        {
            yield return new ReportTable(
                "What this rests on that was not measured",
                [new("assumed"), new("origin"), new("source")],
                [.. assumed.Select(assumption => Row(assumption.Text, Wording.Of(assumption.Origin), assumption.Source ?? CellText.Absent))]);
        }
    }

    private static string Law(BatteryCurve curve)
    {
        var battery = curve.Battery;
        if (battery.Lifetimes is { } points)
            return $"Lifetime through the data sheet's points, {RoundedNumber.Short(points.Lowest.Amperes, 3)} A to {RoundedNumber.Short(points.Highest.Amperes, 3)} A.";
        var rated = $"{RoundedNumber.Short(battery.RatedCapacity.AmpereHours, 2)} Ah at the {RoundedNumber.Short(battery.Rate.Hours, 2)} h rate, exponent {RoundedNumber.Short(battery.PeukertExponent, 4)}";
        return battery.ExponentRange is { } range
            ? $"{rated}, taken from {RoundedNumber.Short(range.Lowest.Amperes, 3)} A to {RoundedNumber.Short(range.Highest.Amperes, 3)} A."
            : $"{rated}.";
    }

    private static string Wells(BatteryCurve curve)
    {
        var wells = curve.Battery.KineticWells!;
        return $"Kinetic model: {RoundedNumber.Short(wells.Available * 100, 1)} % available, {RoundedNumber.Short(wells.RatePerHour, 3)} /h, {RoundedNumber.Short(wells.Capacity.AmpereHours, 2)} Ah in both wells, "
            + $"{RoundedNumber.Short(wells.Capacity / curve.Battery.RatedCapacity * 100, 1)} % of the rating, fitted to the lifetimes at the 20-, 5- and 1-hour currents; above the 1-hour current it was fitted to nothing.";
    }

    private static ReportTable Checks(BatteryCurve curve) => new(
        "Charge left when a rating's own current reaches its end voltage, new and warm",
        [new("current", "A"), new("rated", "min"), new("end", "V"), new("end voltage"), new("charge left", "%")],
        [.. curve.RatingChecks.Select(check => Row(
            RoundedNumber.Short(check.Rating.Current.Amperes, 3),
            CellText.Minutes(check.Rating.Lasts),
            CellText.Volts(check.EndVoltage),
            check.IsEndStated ? "stated" : "usual for its kind",
            CellText.Percent(check.ChargeLeft)))]);

    private static string Warning(RatingCheck check) =>
        $"At {RoundedNumber.Short(check.Rating.Current.Amperes, 3)} A the end of its rating, {CellText.Volts(check.EndVoltage)} V, is reached with {CellText.Percent(check.ChargeLeft)} % of the charge left. "
        + "The rating's time already contains that drop, so it counts twice and the minutes err short. Type the data sheet as discharge_points, or an EMF at 0 % of the end voltage plus the drop.";
}
