namespace Endurance.Cli.Watching;

/// <summary>The part of a request (RFC 9112) that the watch answers to.</summary>
/// <param name="Method">As sent.</param>
/// <param name="Path">Before the question mark.</param>
/// <param name="Query">After the question mark; empty without one.</param>
/// <param name="Host">Of the one Host field; empty where there is none or more than one.</param>
internal sealed record HttpRequest(string Method, string Path, string Query, string Host)
{
    /// <param name="head">Request line and fields, without the empty line at their end.</param>
    /// <returns><see langword="null"/>: not a request of HTTP/1.</returns>
    public static HttpRequest? Parse(string head)
    {
        var lines = head.Split("\r\n");
        if (lines[0].Split(' ') is not [{ Length: > 0 } method, ['/', ..] target, "HTTP/1.1" or "HTTP/1.0"])
            return null;
        var hosts = lines.Skip(1)
            .Where(line => line.StartsWith("Host:", StringComparison.OrdinalIgnoreCase))
            .Select(line => line["Host:".Length..].Trim(' ', '\t'))
            .ToArray();
        var mark = target.IndexOf('?', StringComparison.Ordinal);
        return new HttpRequest(
            method,
            mark < 0 ? target : target[..mark],
            mark < 0 ? "" : target[(mark + 1)..],
            hosts is [var host] ? host : "");
    }
}
