using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Findings;
using Endurance.Library;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Keys;
using static System.FormattableString;

namespace Endurance.Yaml.Binding;

/// <summary>Binds one diode, named or written in its feed.</summary>
internal static class DiodeBinder
{
    private static readonly ImmutableArray<string> Kinds = ["schottky", "silicon", "ideal_controller"];
    private static readonly ImmutableArray<string> ControllerKeys = ["on_resistance", "regulated_drop"];

    private static readonly ImmutableArray<string> CurveKeys =
        ["forward", "at", "saturation_current", "ideality", "series_resistance", "temperature", "energy_gap", "xti"];

    private static readonly ImmutableArray<string> JunctionKeys = [.. CurveKeys, "leakage", "heat_path", "max_junction"];

    private static readonly Resistance DefaultShort = Resistance.FromMilliohms(1);
    private static readonly Temperature DefaultTemperature = Temperature.FromCelsius(27);
    private static readonly Temperature DefaultForwardTemperature = Temperature.FromCelsius(25);

    /// <summary>A fitted curve further than this from a point is worth a warning.</summary>
    private static readonly Voltage NotableMiss = Voltage.FromVolts(0.02);

    /// <summary>The diode; <see langword="null"/> when its kind is missing or wrong, which has been reported.</summary>
    public static Diode? Bind(string part, MappingReader reader)
    {
        switch (reader.Text("kind"))
        {
            case "schottky":
                return Junction(part, reader, SemiconductorKind.Schottky);
            case "silicon":
                return Junction(part, reader, SemiconductorKind.Silicon);
            case "ideal_controller":
                return Controller(part, reader);
            case null:
                return null;
            case var kind when DiodeTable.Find(kind) is { } known:
                return OfClass(part, reader, known);
            case var kind:
                reader.Error("unknown-word", "kind", $"{Quoted.Of(kind)} is not a kind of diode", $"{string.Join(", ", Kinds)}, or a class of the library", NearestName.Find(kind, [.. Kinds, .. DiodeTable.Rows.Select(row => row.Name)]));
                return null;
        }
    }

    /// <summary>A class of the library as it stands in its table, with its source among the assumptions.</summary>
    public static Diode Listed(string part, MappingReader reader, DiodeClass known)
    {
        reader.Reading.Assume(part, $"diode {known.Name}: {known.Values}", Origin.Library, known.Source);
        return known.Diode with { Rated = known.Rated };
    }

    /// <summary>A class of the library, cooled as the scenario says; without a heat path its junction stays at 27 degC.</summary>
    private static Diode OfClass(string part, MappingReader reader, DiodeClass known)
    {
        Refuse(reader, known.Diode is JunctionDiode ? [.. CurveKeys, .. ControllerKeys] : [.. JunctionKeys, .. ControllerKeys], $"the class {known.Name}, which brings its own curve");
        var listed = Listed(part, reader, known);
        var diode = listed with { Rated = reader.Current("rated") ?? listed.Rated, ShortResistance = reader.Resistance("short_resistance") ?? listed.ShortResistance };
        if (diode is not JunctionDiode junction)
            return diode;
        return junction with
        {
            Leakage = Conductance.FromSiemens(reader.Quantity("leakage") ?? junction.Leakage.Siemens),
            HeatPath = reader.Quantity("heat_path"),
            MaximumJunction = reader.Temperature("max_junction") ?? known.MaximumJunction,
        };
    }

    private static IdealDiodeController Controller(string part, MappingReader reader)
    {
        Refuse(reader, JunctionKeys, "an ideal_controller");
        if (!reader.Has("on_resistance"))
            reader.ReportMissing("on_resistance", reader.Known("on_resistance").Form);
        if (!reader.Has("regulated_drop"))
            reader.Reading.Assume(part, "no regulated drop: the on-resistance alone");
        return new IdealDiodeController
        {
            OnResistance = reader.Resistance("on_resistance") ?? DefaultShort,
            RegulatedDrop = reader.Voltage("regulated_drop") ?? Voltage.Zero,
            Rated = reader.Current("rated"),
            ShortResistance = reader.Resistance("short_resistance") ?? DefaultShort,
        };
    }

    private static JunctionDiode Junction(string part, MappingReader reader, SemiconductorKind kind)
    {
        Refuse(reader, ControllerKeys, $"a {kind.ToString().ToLowerInvariant()} diode");
        var defaults = DiodeDefaults.For(kind);
        var ideality = Defaulted(part, reader, "ideality", defaults.Ideality, "ideality {0}");
        var curve = reader.Has("forward") ? Fitted(part, reader, ideality) : Given(part, reader, ideality);
        return new JunctionDiode
        {
            Kind = kind,
            SaturationCurrent = curve.Saturation,
            Ideality = curve.Ideality,
            SeriesResistance = curve.Series,
            Temperature = curve.Temperature,
            EnergyGap = Defaulted(part, reader, "energy_gap", defaults.EnergyGap, "energy gap {0} eV"),
            SaturationExponent = Defaulted(part, reader, "xti", defaults.SaturationExponent, "saturation temperature exponent (xti) {0}"),
            Leakage = Conductance.FromSiemens(reader.Quantity("leakage") ?? 0),
            Rated = reader.Current("rated"),
            ShortResistance = reader.Resistance("short_resistance") ?? DefaultShort,
            HeatPath = reader.Quantity("heat_path"),
            MaximumJunction = reader.Temperature("max_junction"),
        };
    }

    private static Curve Given(string part, MappingReader reader, double ideality)
    {
        foreach (var key in (ReadOnlySpan<string>)["saturation_current", "series_resistance"])
        {
            if (!reader.Has(key))
                reader.ReportMissing(key, $"{reader.Known(key).Form}; or `forward` points in place of saturation_current and series_resistance");
        }

        if (reader.Has("at"))
            reader.Error("conflicting-keys", "at", "`at` belongs to `forward` points, and there are none", "`temperature`, at which saturation_current holds");
        if (!reader.Has("temperature"))
            reader.Reading.Assume(part, "saturation current and series resistance hold at 27 degC");
        return new Curve(
            Current.FromAmperes(reader.Quantity("saturation_current") ?? 1e-6),
            ideality,
            reader.Resistance("series_resistance") ?? DefaultShort,
            reader.Temperature("temperature") ?? DefaultTemperature);
    }

    private static Curve Fitted(string part, MappingReader reader, double ideality)
    {
        foreach (var key in (ReadOnlySpan<string>)["saturation_current", "series_resistance", "temperature"])
        {
            if (reader.Has(key))
                reader.Error("conflicting-keys", key, $"{reader.Owner} has both `forward` and `{key}`", key is "temperature" ? "`at`, at which the forward points hold" : "one of the two");
        }

        if (!reader.Has("at"))
            reader.Reading.Assume(part, "forward points hold at 25 degC");
        var junction = reader.Temperature("at") ?? DefaultForwardTemperature;
        var nothing = new Curve(Current.FromAmperes(1e-6), ideality, DefaultShort, junction);
        if (Points(reader) is not { } points)
            return nothing;
        if (ForwardPoints.Fit(points, ideality, junction) is not { Ideality: >= 0.5 and <= 10 } fit)
        {
            reader.Error("forward-points-misfit", "forward", $"no diode curve of this kind runs through the forward points of {reader.Owner}", "points from one data sheet curve, amps and volts both rising");
            return nothing;
        }

        if (fit.WorstMiss > NotableMiss)
            reader.Reading.Diagnostics.Add(Severity.Warning, "forward-points-misfit", reader.PlaceOf("forward"), Invariant($"the fitted curve misses a forward point of {reader.Owner} by {fit.WorstMiss.Volts * 1000:0} mV"), "points from one data sheet curve");
        var held = Math.Abs(fit.Ideality - ideality) > 1e-9 ? Invariant($"; series resistance held at 0.1 mohm, ideality fitted as {fit.Ideality:0.###}") : "";
        var misfit = points.Length > 2 ? Invariant($"; largest misfit {fit.WorstMiss.Volts * 1000:0.0} mV over {points.Length} points") : "";
        reader.Reading.Assume(part, Invariant($"fitted to its forward points: saturation current {fit.SaturationCurrent.Amperes:G4} A, series resistance {fit.SeriesResistance.Milliohms:G4} mohm{held}{misfit}"), Origin.Derived);
        return new Curve(fit.SaturationCurrent, fit.Ideality, fit.SeriesResistance, junction);
    }

    private static ImmutableArray<ForwardPoint>? Points(MappingReader reader)
    {
        if (TableReader.Rows(reader, "forward", FeedKeys.ForwardCurrent, FeedKeys.ForwardDrop, "current") is not { } rows)
            return null;
        if (rows.Length < 2)
        {
            reader.Error("table-incomplete", "forward", $"`forward` of {reader.Owner} has fewer than two points", reader.Known("forward").Form);
            return null;
        }

        if (!TableReader.Rises(
            reader, rows, row => row.Y, (highest, volts) => volts > highest, "the drop of this row is not above those of the rows before", "a drop that rises with the current"))
            return null;
        return [.. rows.Select(row => new ForwardPoint(Current.FromAmperes(row.X), Voltage.FromVolts(row.Y)))];
    }

    private static double Defaulted(string part, MappingReader reader, string key, double value, string text)
    {
        if (!reader.Has(key))
            reader.Reading.Assume(part, text.Replace("{0}", value.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal), Origin.Library, DiodeDefaults.Source);
        return reader.Quantity(key) ?? value;
    }

    private static void Refuse(MappingReader reader, ImmutableArray<string> keys, string kind)
    {
        foreach (var key in keys.Where(reader.Has))
            reader.Error("conflicting-keys", key, $"`{key}` does not belong to {kind}", null);
    }

    private readonly record struct Curve(Current Saturation, double Ideality, Resistance Series, Temperature Temperature);
}
