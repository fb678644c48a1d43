using System.Globalization;

namespace Endurance.Cli.Watching;

/// <summary>What the watch answers to a request.</summary>
internal static class WatchAnswers
{
    /// <summary>The page asks this path which version there is; with <c>?shown=</c> it is answered when there is another.</summary>
    private const string VersionPath = "/version", Shown = "shown=";

    /// <param name="request"><see langword="null"/>: it could not be understood.</param>
    /// <param name="state">To show.</param>
    /// <param name="port">That the watch listens on.</param>
    public static HttpAnswer Of(HttpRequest? request, WatchState state, int port)
    {
        if (request is null)
            return HttpAnswer.Words("400 Bad Request", "This is not a request that the watch understands.");
        var answer = Body(request, state, port);
        return string.Equals(request.Method, "HEAD", StringComparison.Ordinal) ? answer with { HasBody = false } : answer;
    }

    /// <summary>Whether the answer is worth waiting for: the page already shows this state.</summary>
    public static bool Waits(HttpRequest? request, WatchState state, int port) =>
        request is { Method: "GET", Path: VersionPath } && IsOwnHost(request.Host, port)
        && request.Query.StartsWith(Shown, StringComparison.Ordinal) && string.Equals(request.Query[Shown.Length..], state.Version, StringComparison.Ordinal);

    private static HttpAnswer Body(HttpRequest request, WatchState state, int port)
    {
        if (!IsOwnHost(request.Host, port))
            return HttpAnswer.Words("403 Forbidden", "The watch answers to 127.0.0.1 and localhost alone.");
        if (request.Method is not ("GET" or "HEAD"))
            return HttpAnswer.Words("405 Method Not Allowed", "The watch only shows.") with { Fields = "Allow: GET, HEAD\r\n" };
        return request.Path switch
        {
            "/" => HttpAnswer.Page(state.Page),
            "/last-good" when state.GoodPage is { } good => HttpAnswer.Page(good),
            VersionPath => HttpAnswer.Words("200 OK", state.Version),
            "/favicon.ico" => new HttpAnswer("200 OK", "image/x-icon", ""),
            _ => HttpAnswer.Words("404 Not Found", "There is nothing here; the report is at /."),
        };
    }

    /// <summary>A page of elsewhere whose name was made to lead to this machine still sends its own name.</summary>
    private static bool IsOwnHost(string host, int port)
    {
        var end = string.Create(CultureInfo.InvariantCulture, $":{port}");
        var name = host.EndsWith(end, StringComparison.Ordinal) ? host[..^end.Length] : port == 80 ? host : "";
        return name is "127.0.0.1" || string.Equals(name, "localhost", StringComparison.OrdinalIgnoreCase);
    }
}
