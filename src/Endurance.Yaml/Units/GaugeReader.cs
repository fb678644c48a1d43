using System.Globalization;
using Endurance.Components;
using Endurance.Library;

namespace Endurance.Yaml.Units;

/// <summary>Reads wire gauges: <c>12 AWG</c>, <c>0 AWG</c>, <c>2/0 AWG</c>, <c>00 AWG</c>; the space is optional.</summary>
internal static class GaugeReader
{
    private const string Suffix = "AWG";

    /// <summary><see langword="null"/> when the text is not a gauge.</summary>
    public static WireGauge? Read(string text)
    {
        if (!text.EndsWith(Suffix, StringComparison.Ordinal))
            return null;
        var size = text[..^Suffix.Length].TrimEnd();
        if (size.Length is > 1 and <= 4 && size.All(digit => digit == '0'))
            return new WireGauge(1 - size.Length);
        if (size.EndsWith("/0", StringComparison.Ordinal))
            return size[..^2] is [>= '1' and <= '4'] zeros ? new WireGauge(1 - (zeros[0] - '0')) : null;
        var isNumber = int.TryParse(size, NumberStyles.None, CultureInfo.InvariantCulture, out var number);
        return isNumber && number <= 40 && (size is "0" || size[0] != '0') ? new WireGauge(number) : null;
    }

    /// <summary>The gauges of the wire table, as a message lists them.</summary>
    public static string Listed => string.Join(", ", WireTable.Rows.Select(row => row.Gauge.ToString()));
}
