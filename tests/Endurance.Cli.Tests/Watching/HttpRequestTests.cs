using Endurance.Cli.Watching;

namespace Endurance.Cli.Tests.Watching;

public sealed class HttpRequestTests
{
    [Fact]
    public void Request_WithAQuery_IsTakenApart() =>
        Assert.Equal(
            new HttpRequest("GET", "/version", "shown=a?b", "localhost:80"),
            HttpRequest.Parse("GET /version?shown=a?b HTTP/1.1\r\nAccept: */*\r\nhost:\tlocalhost:80 "));

    [Theory]
    [InlineData("")]
    [InlineData("GET")]
    [InlineData("GET /")]
    [InlineData("GET  / HTTP/1.1")]
    [InlineData(" / HTTP/1.1")]
    [InlineData("GET / HTTP/2")]
    [InlineData("GET http://127.0.0.1/ HTTP/1.1")]
    [InlineData("GET / HTTP/1.1 extra")]
    [InlineData("\u0016\u0003\u0001")]
    public void Text_ThatIsNoRequest_IsNone(string head) => Assert.Null(HttpRequest.Parse(head));

    [Theory]
    [InlineData("GET / HTTP/1.1")]
    [InlineData("GET / HTTP/1.1\r\nHost: 127.0.0.1\r\nHost: elsewhere")]
    public void Host_MissingOrGivenTwice_IsEmpty(string head) => Assert.Equal("", HttpRequest.Parse(head)!.Host);
}
