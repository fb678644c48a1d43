using System.Text;
using Endurance.Cli.Watching;

namespace Endurance.Cli.Tests.Watching;

public sealed class WatchAnswersTests
{
    private const int Port = 8014;
    private static readonly WatchState State = new("v1", "<p>page</p>");

    [Theory]
    [InlineData("GET", "/", "127.0.0.1:8014", "200 OK", "<p>page</p>")]
    [InlineData("GET", "/", "LOCALHOST:8014", "200 OK", "<p>page</p>")]
    [InlineData("GET", "/version", "127.0.0.1:8014", "200 OK", "v1\n")]
    [InlineData("GET", "/last-good", "127.0.0.1:8014", "404 Not Found", "There is nothing here; the report is at /.\n")]
    [InlineData("GET", "/../etc/passwd", "127.0.0.1:8014", "404 Not Found", "There is nothing here; the report is at /.\n")]
    [InlineData("GET", "/mine.yaml", "127.0.0.1:8014", "404 Not Found", "There is nothing here; the report is at /.\n")]
    [InlineData("POST", "/", "127.0.0.1:8014", "405 Method Not Allowed", "The watch only shows.\n")]
    [InlineData("OPTIONS", "/", "127.0.0.1:8014", "405 Method Not Allowed", "The watch only shows.\n")]
    [InlineData("GET", "/", "elsewhere.example:8014", "403 Forbidden", "The watch answers to 127.0.0.1 and localhost alone.\n")]
    [InlineData("GET", "/", "127.0.0.1.elsewhere.example:8014", "403 Forbidden", "The watch answers to 127.0.0.1 and localhost alone.\n")]
    [InlineData("GET", "/", "127.0.0.1:80", "403 Forbidden", "The watch answers to 127.0.0.1 and localhost alone.\n")]
    [InlineData("GET", "/", "127.0.0.1", "403 Forbidden", "The watch answers to 127.0.0.1 and localhost alone.\n")]
    [InlineData("GET", "/", "", "403 Forbidden", "The watch answers to 127.0.0.1 and localhost alone.\n")]
    public void Request_OfAKind_GetsItsAnswer(string method, string path, string host, string status, string body)
    {
        var answer = WatchAnswers.Of(new HttpRequest(method, path, "", host), State, Port);

        Assert.Equal((status, body, true), (answer.Status, answer.Body, answer.HasBody));
    }

    [Fact]
    public void Request_ThatIsNone_IsRefused() => Assert.Equal("400 Bad Request", WatchAnswers.Of(null, State, Port).Status);

    [Fact]
    public void Host_OnTheDefaultPort_NeedsNoNumber() =>
        Assert.Equal("200 OK", WatchAnswers.Of(new HttpRequest("GET", "/", "", "localhost"), State, 80).Status);

    [Fact]
    public void Head_OfThePage_TellsTheLengthAndSendsNoPage()
    {
        var wire = Encoding.ASCII.GetString(WatchAnswers.Of(new HttpRequest("HEAD", "/", "", "localhost:8014"), State, Port).ToBytes());

        Assert.StartsWith("HTTP/1.1 200 OK\r\n", wire, StringComparison.Ordinal);
        Assert.Contains("\r\nContent-Length: 11\r\n", wire, StringComparison.Ordinal);
        Assert.EndsWith("\r\n\r\n", wire, StringComparison.Ordinal);
    }

    [Fact]
    public void Answer_OnTheWire_IsNotKeptOrFramedByOthers()
    {
        var wire = Encoding.UTF8.GetString(HttpAnswer.Page("ü").ToBytes());

        Assert.Contains("\r\nCache-Control: no-store\r\n", wire, StringComparison.Ordinal);
        Assert.Contains("\r\nX-Frame-Options: DENY\r\n", wire, StringComparison.Ordinal);
        Assert.Contains("\r\nContent-Length: 2\r\n", wire, StringComparison.Ordinal);
        Assert.EndsWith("\r\n\r\nü", wire, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("GET", "/version", "shown=v1", "127.0.0.1:8014", true)]
    [InlineData("GET", "/version", "shown=v0", "127.0.0.1:8014", false)]
    [InlineData("GET", "/version", "", "127.0.0.1:8014", false)]
    [InlineData("GET", "/", "shown=v1", "127.0.0.1:8014", false)]
    [InlineData("HEAD", "/version", "shown=v1", "127.0.0.1:8014", false)]
    [InlineData("GET", "/version", "shown=v1", "elsewhere.example:8014", false)]
    public void Question_ForWhatIsShownAlready_IsHeldBack(string method, string path, string query, string host, bool waits) =>
        Assert.Equal(waits, WatchAnswers.Waits(new HttpRequest(method, path, query, host), State, Port));

    [Fact]
    public async Task Board_GivenAnotherState_LetsThoseGoWhoWaitedForIt()
    {
        var board = new WatchBoard(State);
        var waiting = board.Replaced(State);
        Assert.False(waiting.IsCompleted);

        board.Post(new WatchState("v2", ""));

        await waiting;
        Assert.True(board.Replaced(State).IsCompleted);
        Assert.False(board.Replaced(board.State).IsCompleted);
    }
}
