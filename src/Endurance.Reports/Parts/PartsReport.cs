using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Library;
using Endurance.Numerics;
using static Endurance.Reports.StudyBlocks;

namespace Endurance.Reports;

/// <summary>The built-in reference data with its sources.</summary>
public static class PartsReport
{
    /// <summary>Chemistries, wires, diodes and protection, each with its tables.</summary>
    public static ReportDocument Describe() => new(
        "Built-in reference data",
        [
            new ReportParagraph("What a scenario may leave out is taken from here, and the report of every run lists it under assumptions. A value typed in the scenario wins."),
            new ReportHeading("Chemistries, for a 12 V battery"),
            .. ChemistryTable.All.Select(Chemistry),
            new ReportHeading("Wires"),
            new ReportTable(
                "Stranded, tin-plated copper aircraft wire",
                [new("gauge"), new("greatest resistance at 20 degC", "ohm/1000 ft"), new("in a bundle at 105 degC", "A"), new("150 degC", "A"), new("200 degC", "A"), new("source")],
                [.. WireTable.Rows.Select(row => Row(
                    row.Gauge.ToString(),
                    RoundedNumber.Short(row.OhmsPerThousandFeet, 3),
                    RoundedNumber.Short(row.AmperesAt105, 1),
                    RoundedNumber.Short(row.AmperesAt150, 1),
                    RoundedNumber.Short(row.AmperesAt200, 1),
                    row.Source))]),
            new ReportTable(
                "Largest breaker or fuse for a wire",
                [new("gauge"), new("breaker", "A"), new("fuse", "A"), new("source")],
                [.. ProtectionChart.Rows.Select(row => Row(
                    row.Gauge.ToString(),
                    row.Breaker is { } breaker ? RoundedNumber.Short(breaker.Amperes, 1) : CellText.Absent,
                    RoundedNumber.Short(row.Fuse.Amperes, 1),
                    ProtectionChart.Source))]),
            new ReportHeading("Diodes"),
            new ReportTable(
                "Parameters of a junction diode that the scenario does not give",
                [new("kind"), new("ideality"), new("energy gap"), new("xti"), new("source")],
                [.. Diodes.Select(diode => Row(
                    diode.Kind,
                    RoundedNumber.Short(diode.Values.Ideality, 3),
                    $"{RoundedNumber.Short(diode.Values.EnergyGap, 3)} eV",
                    RoundedNumber.Short(diode.Values.SaturationExponent, 3),
                    DiodeDefaults.Source))]),
            new ReportTable(
                "Diodes by class: what `diode:` may name without more",
                [new("name"), new("what"), new("rated", "A"), new("at most", "degC"), new("heat path"), new("values"), new("source")],
                [.. DiodeTable.Rows.Select(row => Row(
                    row.Name,
                    row.Title,
                    RoundedNumber.Short(row.Rated.Amperes, 1),
                    row.MaximumJunction is { } most ? RoundedNumber.Short(most.Celsius, 0) : "not known",
                    row.HeatPath is { } path ? $"{RoundedNumber.Short(path, 1)} K/W to {row.HeatPathTo}" : "not known",
                    row.Values,
                    row.Source))]),
            new ReportHeading("Breakers and fuses"),
            new ReportTable(
                "Heating of protection whose rating alone is given",
                [new("kind"), new("carries for ever", "x rating"), new("time constant", "s"), new("source")],
                [.. Protections.Select(entry => Row(
                    entry.Kind,
                    RoundedNumber.Short(entry.Values.Factor, 2),
                    RoundedNumber.Short(entry.Values.TimeConstant.Seconds, 1),
                    ProtectionDefaults.Source))]),
        ]);

    /// <summary>Kinds as a scenario writes them.</summary>
    internal static ImmutableArray<(string Kind, ProtectionDefaults Values)> Protections { get; } =
        [("breaker", ProtectionDefaults.Breaker), ("fuse", ProtectionDefaults.Fuse), ("fusible_link", ProtectionDefaults.FusibleLink)];

    /// <summary>Kinds as a scenario writes them.</summary>
    internal static ImmutableArray<(string Kind, DiodeDefaults Values)> Diodes { get; } =
        [("silicon", DiodeDefaults.For(SemiconductorKind.Silicon)), ("schottky", DiodeDefaults.For(SemiconductorKind.Schottky))];

    /// <summary>Every value of a chemistry: what it is, the value in words, its source.</summary>
    internal static ImmutableArray<(string Name, string Value, string Source)> Values(ChemistryValues values) =>
    [
        ("cells in series", RoundedNumber.Short(values.Cells.Value, 0), values.Cells.Source),
        ("EMF over charge", Table(values.Emf.Value, charge => $"{RoundedNumber.Short(charge * 100, 1)} %", volts => $"{RoundedNumber.Short(volts, 3)} V"), values.Emf.Source),
        ("end of the rated discharge", $"{RoundedNumber.Short(values.EndVoltsPerCell.Value, 3)} V a cell, which with the drop of the rated current replaces the EMF at 0 %", values.EndVoltsPerCell.Source),
        ("resistance times capacity at 25 degC", Table(values.MilliohmAmpereHours.Value, charge => $"{RoundedNumber.Short(charge * 100, 1)} %", product => $"{RoundedNumber.Short(product, 1)} mohm Ah"), values.MilliohmAmpereHours.Source),
        ("Peukert exponent", RoundedNumber.Short(values.PeukertExponent.Value, 3), values.PeukertExponent.Source),
        ("charge efficiency", $"{RoundedNumber.Short(values.ChargeEfficiency.Value * 100, 1)} %", values.ChargeEfficiency.Source),
        ("charge acceptance", $"{RoundedNumber.Short(values.ChargeAcceptancePerHour.Value, 3)} /h", values.ChargeAcceptancePerHour.Source),
        ("capacity over temperature", Table(values.CapacityOverTemperature.Value, Celsius, factor => $"{RoundedNumber.Short(factor * 100, 1)} %"), values.CapacityOverTemperature.Source),
        ("resistance over temperature", Table(values.ResistanceOverTemperature.Value, Celsius, factor => $"x {RoundedNumber.Short(factor, 3)}"), values.ResistanceOverTemperature.Source),
    ];

    private static ReportTable Chemistry(ChemistryValues values) => new(
        ChemistryTable.Word(values.Chemistry),
        [new("what"), new("value"), new("source")],
        [.. Values(values).Select(entry => Row(entry.Name, entry.Value, entry.Source))]);

    private static string Celsius(double celsius) => $"{RoundedNumber.Short(celsius, 1)} degC";

    private static string Table(PiecewiseLinear table, Func<double, string> x, Func<double, string> y) =>
        string.Join(", ", table.X.Zip(table.Y, (abscissa, ordinate) => $"{x(abscissa)}: {y(ordinate)}"));
}
