using Endurance.Components;
using Endurance.Library;

namespace Endurance.Reports;

/// <summary>The built-in reference data for programs: one JSON object.</summary>
public static class PartsJson
{
    private const int Decimals = 6;

    /// <summary>Indented JSON that ends with a line feed; values of a chemistry are words with units.</summary>
    public static string Write() => JsonText.Write(json =>
    {
        JsonText.WriteArray(json, "chemistries", ChemistryTable.All, (chemistry, values) =>
        {
            chemistry.WriteString("name", ChemistryTable.Word(values.Chemistry));
            JsonText.WriteArray(chemistry, "values", PartsReport.Values(values), (entry, value) =>
            {
                entry.WriteString("name", value.Name);
                entry.WriteString("value", value.Value);
                entry.WriteString("source", value.Source);
            });
        });
        JsonText.WriteArray(json, "wires", WireTable.Rows, (wire, row) =>
        {
            wire.WriteString("gauge", row.Gauge.ToString());
            JsonText.Number(wire, "ohms_per_thousand_feet", row.OhmsPerThousandFeet, Decimals);
            JsonText.Number(wire, "amps_105_degc", row.AmperesAt105, Decimals);
            JsonText.Number(wire, "amps_150_degc", row.AmperesAt150, Decimals);
            JsonText.Number(wire, "amps_200_degc", row.AmperesAt200, Decimals);
            JsonText.Number(wire, "largest_breaker_amps", ProtectionChart.Largest(row.Gauge, ProtectionKind.Breaker)?.Amperes, Decimals);
            JsonText.Number(wire, "largest_fuse_amps", ProtectionChart.Largest(row.Gauge, ProtectionKind.Fuse)?.Amperes, Decimals);
            wire.WriteString("source", row.Source);
        });
        JsonText.WriteArray(json, "diodes", PartsReport.Diodes, (diode, kind) =>
        {
            diode.WriteString("kind", kind.Kind);
            JsonText.Number(diode, "ideality", kind.Values.Ideality, Decimals);
            JsonText.Number(diode, "energy_gap_ev", kind.Values.EnergyGap, Decimals);
            JsonText.Number(diode, "xti", kind.Values.SaturationExponent, Decimals);
            diode.WriteString("source", DiodeDefaults.Source);
        });
        JsonText.WriteArray(json, "diode_classes", DiodeTable.Rows, (diode, row) =>
        {
            diode.WriteString("name", row.Name);
            diode.WriteString("what", row.Title);
            JsonText.Number(diode, "rated_amps", row.Rated.Amperes, Decimals);
            diode.WriteString("values", row.Values);
            diode.WriteString("source", row.Source);
        });
        JsonText.WriteArray(json, "protection", PartsReport.Protections, (protection, kind) =>
        {
            protection.WriteString("kind", kind.Kind);
            JsonText.Number(protection, "factor", kind.Values.Factor, Decimals);
            JsonText.Number(protection, "time_constant_seconds", kind.Values.TimeConstant.Seconds, Decimals);
            protection.WriteString("source", ProtectionDefaults.Source);
        });
    });
}
