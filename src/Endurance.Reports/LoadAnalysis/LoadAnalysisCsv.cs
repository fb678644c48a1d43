using Endurance.Studies.LoadAnalysis;

namespace Endurance.Reports;

/// <summary>The load table as comma-separated text (RFC 4180); an empty phase is every phase, an empty basis was not said.</summary>
public static class LoadAnalysisCsv
{
    private const string Header = "load,bus,phase,on,kind,amps,duty_percent,mean_amps,peak_amps,basis,measured_on,nominal_volts";

    /// <summary>A header, then one row a load, coil or field.</summary>
    public static string Write(LoadAnalysisResult result) => CsvRows.Write(
        Header,
        result.Items.Select(item => (string[])
        [
            CsvText.FromPerson(item.Name),
            CsvText.FromPerson(item.Bus),
            CsvText.FromPerson(item.Phase ?? ""),
            CsvText.YesNo(item.IsOn),
            LoadAnalysisReport.Kind(item),
            RoundedNumber.Short(item.Draw.Amperes, 4),
            RoundedNumber.Short(item.Duty * 100, 4),
            RoundedNumber.Short(item.Mean.Amperes, 4),
            RoundedNumber.Short(item.Peak.Amperes, 4),
            item.Basis is { } basis ? Wording.Of(basis) : "",
            item.MeasuredOn is { } date ? CellText.Date(date) : "",
            RoundedNumber.Short(item.Nominal.Volts, 4),
        ]));
}
