using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Numerics;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Yaml.Keys;
using static System.FormattableString;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>capacity</c> with <c>rate</c>, <c>ratings</c>, <c>reserve</c> and <c>peukert</c> to one rated point and an exponent.</summary>
internal sealed class RatingBinder
{
    /// <summary>Discharge current of a reserve rating, to 1.75 V a cell: mkbattery.com, reserve capacity.</summary>
    private static readonly Current ReserveCurrent = Current.FromAmperes(25);

    private const double ReserveEndVolts = 10.5;
    private const double NoticeableDifference = 0.02;

    /// <summary>Below this the minutes of a discharge test were probably meant as hours.</summary>
    private static readonly Duration ShortestUsualRate = Duration.FromMinutes(30);

    private readonly BatteryPart part;
    private readonly ImmutableArray<Load> loads;
    private readonly MappingReader reader;
    private readonly double? typedExponent;

    public RatingBinder(BatteryPart part, ImmutableArray<Load> loads)
    {
        this.part = part;
        this.loads = loads;
        reader = part.Reader;
        typedExponent = reader.Quantity("peukert");
    }

    public BatteryLife Bind()
    {
        var rows = Rows();
        if (rows.IsEmpty)
        {
            if (!reader.Has("peukert") && !reader.Has("ratings") && !reader.Has("reserve") && part.Values is null)
                reader.ReportMissing("peukert", reader.Known("peukert").Form);
            return BatteryLife.Placeholder;
        }

        var stated = rows[0];
        rows = [.. rows.OrderByDescending(row => row.Lasts.Seconds)];
        var reference = reader.Has("ratings") ? rows[0] : stated;
        var range = (rows[0].Current, rows[^1].Current);
        var derived = Derived(rows);
        return new BatteryLife(reference.Current * reference.Lasts, reference.Lasts, Exponent(derived, rows, range))
        {
            ExponentRange = reader.Has("peukert") || derived is null ? null : range,
            Ratings = rows,
        };
    }

    /// <summary>Everything that was stated, in the order of the file; empty after a diagnostic.</summary>
    private ImmutableArray<Rating> Rows()
    {
        if (reader.Has("ratings"))
        {
            foreach (var key in (ReadOnlySpan<string>)["capacity", "rate"])
            {
                if (reader.Has(key))
                    reader.Error("conflicting-keys", key, $"{reader.Owner} has both `ratings` and `{key}`", $"one of the two: `ratings` hold capacities with their hour rates");
            }

            var listed = Listed();
            return listed.IsEmpty ? [] : [.. listed, .. Reserve()];
        }

        if (reader.Has("reserve") && !reader.Has("capacity") && !reader.Has("rate"))
            return [.. Reserve()];
        return Single() is { } single ? [single, .. Reserve()] : [];
    }

    private ImmutableArray<Rating> Listed()
    {
        if (TableReader.Rows(reader, "ratings", BatteryKeys.Rate, BatteryKeys.Capacity) is not { } table)
            return [];
        if (table.IsEmpty)
            reader.Error("missing-value", "ratings", "`ratings` is empty", reader.Known("ratings").Form);
        return [.. table.Select(row => new Rating { Lasts = Duration.FromSeconds(row.X), Current = Current.FromAmperes(row.Y / row.X) })];
    }

    private IEnumerable<Rating> Reserve()
    {
        if (reader.Quantity("reserve") is { } seconds)
            yield return new Rating { Current = ReserveCurrent, Lasts = Duration.FromSeconds(seconds), EndVoltage = Voltage.FromVolts(ReserveEndVolts * part.Twelves) };
    }

    private Rating? Single()
    {
        var capacity = reader.Quantity("capacity");
        var rate = reader.Quantity("rate");
        if (!reader.Has("capacity"))
            reader.ReportMissing("capacity", "18 Ah with its hour rate, such as rate: 20 h; or else ratings, reserve or discharge_points");
        else if (!reader.Has("rate"))
            ReportNoRate(capacity);
        else if (rate < ShortestUsualRate.Seconds)
            part.Warn("rate-short", "rate", $"a capacity of {reader.Owner} that was rated in {reader.Text("rate")} is unusual", "the time of discharge at which the capacity was rated, mostly 20 h, 10 h, 5 h or 1 h");
        return capacity is { } coulombs && rate is { } seconds
            ? new Rating { Lasts = Duration.FromSeconds(seconds), Current = Current.FromAmperes(coulombs / seconds) }
            : null;
    }

    /// <summary>The same ampere-hours mean very different minutes at different hour rates, so none is taken for granted.</summary>
    private void ReportNoRate(double? coulombs)
    {
        const string expected = "rate: the time of discharge at which the capacity was rated, such as 20 h";
        var amperes = EssentialAmperes();
        if (coulombs is not { } charge || amperes <= 0)
        {
            reader.Error("capacity-without-rate", "capacity", $"the capacity of {reader.Owner} has no `rate`", expected);
            return;
        }

        var exponent = typedExponent ?? part.Values?.PeukertExponent.Value ?? BatteryLife.Placeholder.Exponent;
        var capacity = Charge.FromCoulombs(charge);
        double Minutes(double hours) => Law(new BatteryLife(capacity, Duration.FromHours(hours), exponent)).LifetimeAt(Current.FromAmperes(amperes)).Minutes;
        reader.Error(
            "capacity-without-rate", "capacity",
            Invariant($"the capacity of {reader.Owner} has no `rate`: with an exponent of {exponent:0.###} its {capacity.AmpereHours:0.##} Ah carry the essential loads, ")
            + Invariant($"{amperes:0.##} A at {part.NominalVoltage.Volts:0} V, for {Minutes(1):0.0} min as a 1 h rating and for {Minutes(20):0.0} min as a 20 h rating"),
            expected);
    }

    private Battery Law(BatteryLife life) => new()
    {
        Name = part.Name,
        Bus = "",
        RatedCapacity = life.Capacity,
        Rate = life.Rate,
        PeukertExponent = life.Exponent,
        Emf = PiecewiseLinear.Constant(part.NominalVoltage.Volts),
        Resistance = PiecewiseLinear.Constant(1),
        Temperature = part.Temperature,
    };

    /// <summary>Summed nominal current: watts and ohms at the batteries' nominal voltage, means over the duty.</summary>
    private double EssentialAmperes() => loads.Where(load => load.IsEssential).Sum(load => load.Duty * load.CurrentAt(part.NominalVoltage).Amperes);

    /// <summary>k = ln(t1/t2)/ln(I2/I1) from the slowest and the fastest; <see langword="null"/> from a single rating or after a diagnostic.</summary>
    /// <param name="rows">From the slowest to the fastest.</param>
    private double? Derived(ImmutableArray<Rating> rows)
    {
        if (rows.Length == 1)
            return null;
        var key = reader.Has("ratings") && rows[^1].EndVoltage is null ? "ratings" : "reserve";
        for (var i = 1; i < rows.Length; i++)
        {
            if (rows[i].Lasts < rows[i - 1].Lasts && rows[i].Current > rows[i - 1].Current)
                continue;
            reader.Error(
                "ratings-disagree", key,
                $"the ratings of {reader.Owner} do not fit together: {Words(rows[i - 1])}, yet {Words(rows[i])}",
                "a larger current that lasts for a shorter time");
            return null;
        }

        var exponent = Math.Log(rows[0].Lasts / rows[^1].Lasts) / Math.Log(rows[^1].Current / rows[0].Current);
        if (exponent > reader.Known("peukert").Range!.Most)
        {
            reader.Error(
                "exponent-too-high", key,
                Invariant($"the ratings of {reader.Owner} give an exponent of {exponent:0.###}: the faster discharge would give hardly any ampere-hours"),
                Invariant($"ratings that give at most {reader.Known("peukert").Range!.Most}; lead-acid mostly 1.1 to 1.4"));
            return null;
        }

        if (exponent >= 1)
            return exponent;
        reader.Error(
            "exponent-below-one", key,
            Invariant($"the ratings of {reader.Owner} give an exponent of {exponent:0.###}, below 1: the faster discharge would give more ampere-hours"),
            "a capacity that is smaller at the faster rate");
        return null;
    }

    private double Exponent(double? derived, ImmutableArray<Rating> rows, (Current Lowest, Current Highest) range)
    {
        var isFaulty = derived is null && rows.Length > 1;
        if (reader.Has("peukert"))
        {
            var typed = typedExponent ?? BatteryLife.Placeholder.Exponent;
            if (derived is { } other && Math.Abs(other - typed) > NoticeableDifference)
                part.Warn("exponent-differs", "peukert", Invariant($"the exponent {typed:0.###} of {reader.Owner} is used, but its ratings give {other:0.###}"), "`peukert` left out, or ratings that agree with it");
            return typed;
        }

        if (derived is { } exponent)
        {
            var which = rows.Length > 2 ? "the slowest and the fastest of its ratings" : "its two ratings";
            part.Derived(Invariant($"Peukert exponent {exponent:0.0000} from {which}, good for {range.Lowest.Amperes:0.###} A to {range.Highest.Amperes:0.###} A"));
            return exponent;
        }

        if (part.Values?.PeukertExponent is { } library && !isFaulty)
        {
            part.Library(Invariant($"Peukert exponent {library.Value:0.###}"), library.Source);
            return library.Value;
        }

        if (!isFaulty && part.Values is null)
            reader.ReportMissing("peukert", reader.Known("peukert").Form);
        return BatteryLife.Placeholder.Exponent;
    }

    private static string Words(Rating rating) => Invariant($"{rating.Current.Amperes:0.###} A last {rating.Lasts.Minutes:0.##} min");
}
