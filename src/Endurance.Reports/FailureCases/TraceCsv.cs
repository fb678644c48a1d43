using System.Collections.Immutable;
using System.Text;
using Endurance.Simulation;

namespace Endurance.Reports;

/// <summary>The signals of one run over time, as comma-separated text (RFC 4180).</summary>
public static class TraceCsv
{
    private sealed record Column(string Heading, ImmutableArray<double> Values, double Scale, int Decimals);

    /// <summary>Minutes from zero, then volts of buses, amperes and charge of batteries, amperes of feeds. An instant that jumps has two rows.</summary>
    public static string Write(Trace trace)
    {
        Column[] columns =
        [
            new("minutes", trace.Seconds, 1.0 / 60, 6),
            .. trace.BusVolts.Select(bus => new Column(bus.Name + "_volts", bus.Values, 1, 4)),
            .. trace.BatteryAmperes.Select(battery => new Column(battery.Name + "_amps", battery.Values, 1, 6)),
            .. trace.BatteryCharge.Select(battery => new Column(battery.Name + "_charge_percent", battery.Values, 100, 4)),
            .. trace.FeedAmperes.Select(feed => new Column(feed.Name + "_amps", feed.Values, 1, 6)),
        ];
        var text = new StringBuilder().AppendJoin(',', columns.Select(column => CsvText.FromPerson(column.Heading))).Append(CsvText.LineEnd);
        for (var row = 0; row < trace.Seconds.Length; row++)
        {
            for (var i = 0; i < columns.Length; i++)
            {
                if (i > 0)
                    text.Append(',');
                text.Append(RoundedNumber.Short(columns[i].Values[row] * columns[i].Scale, columns[i].Decimals));
            }

            text.Append(CsvText.LineEnd);
        }

        return text.ToString();
    }
}
