using System.Text;

namespace Endurance.Reports;

/// <summary>Comma-separated text (RFC 4180) of rows whose cells are made already.</summary>
internal static class CsvRows
{
    /// <param name="header">Keys, joined by commas.</param>
    /// <param name="rows">Cells that a person typed are made safe by <see cref="CsvText.FromPerson"/>.</param>
    public static string Write(string header, IEnumerable<IEnumerable<string>> rows)
    {
        var text = new StringBuilder(header).Append(CsvText.LineEnd);
        foreach (var row in rows)
            text.AppendJoin(',', row).Append(CsvText.LineEnd);
        return text.ToString();
    }
}
