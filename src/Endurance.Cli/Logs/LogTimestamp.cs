using System.Globalization;

namespace Endurance.Cli.Logs;

/// <summary>Instants as loggers write them: year first, so that no day can be read as a month.</summary>
internal static class LogTimestamp
{
    private static readonly string[] Formats =
    [
        "yyyy-MM-dd HH:mm:ss.FFFFFFFK", "yyyy-MM-ddTHH:mm:ss.FFFFFFFK", "yyyy-MM-dd HH:mm:ssK", "yyyy-MM-ddTHH:mm:ssK",
        "yyyy-MM-dd HH:mm", "yyyy-MM-ddTHH:mm", "yyyy/MM/dd HH:mm:ss.FFFFFFF", "yyyy/MM/dd HH:mm:ss", "yyyy/MM/dd HH:mm",
    ];

    /// <summary>Seconds on a scale of their own; <see langword="null"/> when the text is no instant.</summary>
    public static double? Seconds(string text) =>
        DateTimeOffset.TryParseExact(text.Replace(',', '.'), Formats, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var instant)
            ? (instant - DateTimeOffset.UnixEpoch).TotalSeconds
            : null;

    /// <summary>Whether it says which zone it is in.</summary>
    public static bool HasZone(string text) =>
        text.EndsWith('Z') || (text.Length > 6 && text[^3] == ':' && text[^6] is '+' or '-' && text.Length > 20);
}
