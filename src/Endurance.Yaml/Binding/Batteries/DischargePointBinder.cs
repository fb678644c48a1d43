using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Findings;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;
using static System.FormattableString;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>discharge_points</c> to a lifetime curve.</summary>
internal static class DischargePointBinder
{
    /// <summary>Ratio of neighbouring currents below which the line between them is at the mercy of rounding.</summary>
    private const double LeastSpacing = 1.01;

    private const double LeastExponent = 0.5;
    private const double MostExponent = 3;
    private const double MostChargeLeft = 0.5;

    private static readonly string[] Replaced = ["capacity", "rate", "peukert", "ratings", "reserve"];

    /// <summary>The points as typed; empty when there are none, or after a diagnostic.</summary>
    public static ImmutableArray<(DischargePoint Point, SourceSpan Place)> Points(MappingReader reader)
    {
        if (!reader.Has("discharge_points"))
            return [];
        foreach (var key in Replaced.Where(reader.Has))
            reader.Error("conflicting-keys", key, $"{reader.Owner} has both `discharge_points` and `{key}`", "one of the two: the points are the whole lifetime");
        var items = MappingList.Of(reader, "discharge_points", BatteryKeys.DischargePoint, "point");
        return [.. items.Select(item => (Point(item), item.Place))];
    }

    /// <summary>Rated by the point that lasts longest, as typed: what a chemistry's values are scaled by.</summary>
    public static BatteryLife Lowest(ImmutableArray<(DischargePoint Point, SourceSpan Place)> points, BatteryPart part)
    {
        if (points.IsEmpty)
            return BatteryLife.Placeholder;
        var (longest, _) = points.MaxBy(entry => entry.Point.Lasts.Seconds);
        var amperes = longest.Current?.Amperes ?? (longest.Power!.Value.Watts / part.NominalVoltage.Volts);
        return new BatteryLife(Current.FromAmperes(amperes) * longest.Lasts, longest.Lasts, 1);
    }

    /// <summary>The curve through the points; the longest point alone after a diagnostic.</summary>
    public static BatteryLife Through(ImmutableArray<(DischargePoint Point, SourceSpan Place)> points, BatteryPart part, PiecewiseLinear emf, PiecewiseLinear ohms)
    {
        var lowest = Lowest(points, part);
        if (part.HasErrors || !AreWithinReach(points, part, emf, ohms))
            return lowest;
        var curve = LifetimeCurve.Through([.. points.Select(entry => entry.Point)], emf, ohms);
        if (!IsUsable(curve, part))
            return lowest;
        part.Derived(Invariant($"lifetime over current through the data sheet's points, good for {curve.Lowest.Amperes:0.###} A to {curve.Highest.Amperes:0.###} A"));
        var ratings = Ratings([.. points.Select(entry => entry.Point)], curve);
        foreach (var ((_, place), rating) in points.Zip(ratings))
        {
            var left = 1 - (rating.Lasts / curve.At(rating.Current));
            if (left > MostChargeLeft)
            {
                part.Reader.Reading.Diagnostics.Add(
                    Severity.Warning, "point-leaves-charge", place,
                    Invariant($"at the end of this point {part.Reader.Owner} would still hold {left * 100:0} % of its charge by its EMF and resistance"),
                    "an end voltage, an EMF and a resistance that fit together");
            }
        }

        return new BatteryLife(curve.LowestCurrentCapacity, curve.Points[0].Lifetime, 1) { Lifetimes = curve, Ratings = ratings };
    }

    private static bool AreWithinReach(ImmutableArray<(DischargePoint Point, SourceSpan Place)> points, BatteryPart part, PiecewiseLinear emf, PiecewiseLinear ohms)
    {
        foreach (var (point, place) in points)
        {
            var full = point.TerminalVoltage(Voltage.FromVolts(emf.At(1)), Resistance.FromOhms(ohms.At(1)));
            if (full > point.EndVoltage)
                continue;
            part.Reader.Reading.Diagnostics.Error(
                "point-out-of-reach", place,
                Invariant($"a full {part.Name} stands at {full.Volts:0.##} V at this load, not above the {point.EndVoltage.Volts:0.##} V at which the point ends"),
                "an end voltage below that, a larger EMF or a smaller resistance");
        }

        return !part.HasErrors;
    }

    private static bool IsUsable(LifetimeCurve curve, BatteryPart part)
    {
        if (curve.LeastSpacing < LeastSpacing)
        {
            part.Reader.Error("points-too-close", "discharge_points", $"two discharge points of {part.Reader.Owner} have nearly the same current", "currents at least 1 % apart");
            return false;
        }

        for (var i = 1; i < curve.Points.Length; i++)
        {
            var exponent = curve.ExponentOf(i);
            var span = Invariant($"between {curve.Points[i - 1].Current.Amperes:0.###} A and {curve.Points[i].Current.Amperes:0.###} A the discharge points of {part.Reader.Owner} have an exponent of {exponent:0.###}");
            if (exponent is < LeastExponent or > MostExponent)
                part.Reader.Error("span-exponent", "discharge_points", span, Invariant($"{LeastExponent} to {MostExponent}; lead-acid mostly 1.1 to 1.4"));
            else if (exponent < 1)
                part.Warn("span-exponent-below-one", "discharge_points", $"{span}, below 1, which is used", "1 or more: a faster discharge gives less");
        }

        return !part.HasErrors;
    }

    /// <summary>The points with the currents the curve has for them; more power goes with more current.</summary>
    private static ImmutableArray<Rating> Ratings(ImmutableArray<DischargePoint> points, LifetimeCurve curve)
    {
        var typed = points.Where(point => point.Current is not null).Select(point => point.Current!.Value).ToHashSet();
        var means = new Queue<Current>(curve.Points.Select(point => point.Current).Where(current => !typed.Contains(current)));
        var byPower = points.Where(point => point.Power is not null).OrderBy(point => point.Power!.Value.Watts).ToDictionary(point => point, _ => means.Dequeue());
        return [.. points.Select(point => new Rating
        {
            Current = point.Current ?? byPower[point],
            Power = point.Power,
            Lasts = point.Lasts,
            EndVoltage = point.EndVoltage,
        })];
    }

    private static DischargePoint Point(MappingReader reader)
    {
        const string form = "either current: 0.9 A or power: 210 W";
        if (reader.Has("current") && reader.Has("power"))
            reader.Error("conflicting-keys", "power", $"{reader.Owner} has both `current` and `power`", form);
        else if (!reader.Has("current") && !reader.Has("power"))
            reader.Reading.Diagnostics.Error("missing-key", reader.Place, $"{reader.Owner} has neither `current` nor `power`", form);
        var watts = reader.Quantity("power");
        return new DischargePoint
        {
            Power = watts is { } power ? Power.FromWatts(power) : null,
            Current = watts is null ? Current.FromAmperes(reader.RequiredQuantity("current")) : null,
            Lasts = Duration.FromSeconds(reader.RequiredQuantity("lasts")),
            EndVoltage = Voltage.FromVolts(reader.RequiredQuantity("to")),
        };
    }
}
