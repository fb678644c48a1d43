using System.Globalization;
using System.Text;

namespace Endurance.Cli.Watching;

/// <summary>What goes back to a browser.</summary>
/// <param name="Status">Number and words, such as <c>200 OK</c>.</param>
/// <param name="Type">Of the body.</param>
/// <param name="Body">Text.</param>
internal sealed record HttpAnswer(string Status, string Type, string Body)
{
    /// <summary>Further fields, each ending in CR LF.</summary>
    public string Fields { get; init; } = "";

    /// <summary>A HEAD request gets the fields alone.</summary>
    public bool HasBody { get; init; } = true;

    public static HttpAnswer Page(string html) => new("200 OK", "text/html; charset=utf-8", html);

    public static HttpAnswer Words(string status, string text) => new(status, "text/plain; charset=utf-8", text + "\n");

    /// <summary>As it goes over the wire; the connection ends with it, and nothing keeps a copy.</summary>
    public byte[] ToBytes()
    {
        var body = Encoding.UTF8.GetBytes(Body);
        var head = string.Create(
            CultureInfo.InvariantCulture,
            $"HTTP/1.1 {Status}\r\nContent-Type: {Type}\r\nContent-Length: {body.Length}\r\nCache-Control: no-store\r\nX-Content-Type-Options: nosniff\r\nX-Frame-Options: DENY\r\nCross-Origin-Resource-Policy: same-origin\r\nReferrer-Policy: no-referrer\r\n{Fields}Connection: close\r\n\r\n");
        return [.. Encoding.ASCII.GetBytes(head), .. HasBody ? body : []];
    }
}
