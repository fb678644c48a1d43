using System.Net;
using System.Net.Sockets;
using System.Text;

namespace Endurance.Cli.Watching;

/// <summary>Answers browsers of this machine, one request a connection.</summary>
/// <remarks>
/// A socket and a few lines: a web framework would lengthen the start of every command, and the listener of the class library
/// cannot be given a free port and needs rights of its own on some systems.
/// </remarks>
internal sealed class LoopbackServer : IDisposable
{
    private const int LargestHead = 16 * 1024, MostConnections = 64;

    /// <summary>For a request to come in; for a question about the version to be answered anyway; for a browser to hang up.</summary>
    private static readonly TimeSpan Asking = TimeSpan.FromSeconds(10), Waiting = TimeSpan.FromSeconds(25), Parting = TimeSpan.FromSeconds(2);

    private readonly TcpListener _listener;

    private LoopbackServer(TcpListener listener) => _listener = listener;

    public int Port => ((IPEndPoint)_listener.LocalEndpoint).Port;

    /// <param name="port">0: any free one.</param>
    /// <exception cref="SocketException">The port is in use or not allowed.</exception>
    public static LoopbackServer Listen(int port)
    {
        var listener = new TcpListener(IPAddress.Loopback, port);
        try
        {
            listener.ExclusiveAddressUse = true;
            listener.Start();
            return new LoopbackServer(listener);
        }
        catch
        {
            listener.Dispose();
            throw;
        }
    }

    /// <exception cref="OperationCanceledException">The token was cancelled, which is how it ends.</exception>
    public async Task ServeAsync(WatchBoard board, CancellationToken cancellation)
    {
        using var free = new SemaphoreSlim(MostConnections);
        var open = new HashSet<Task>();
        try
        {
            while (true)
            {
                await free.WaitAsync(cancellation);
                var socket = await _listener.AcceptSocketAsync(cancellation);
                open.RemoveWhere(done => done.IsCompleted);
                open.Add(ServeOneAsync(socket, board, free, cancellation));
            }
        }
        finally
        {
            await Task.WhenAll(open);
        }
    }

    public void Dispose() => _listener.Dispose();

    /// <summary>Never throws: a browser that goes away in the middle is no news.</summary>
    private async Task ServeOneAsync(Socket socket, WatchBoard board, SemaphoreSlim free, CancellationToken cancellation)
    {
        using var stream = new NetworkStream(socket, ownsSocket: true);
        try
        {
            var request = await ReadAsync(stream, cancellation);
            var state = board.State;
            if (WatchAnswers.Waits(request, state, Port))
                await Task.WhenAny(board.Replaced(state), Task.Delay(Waiting, cancellation));
            cancellation.ThrowIfCancellationRequested();
            await stream.WriteAsync(WatchAnswers.Of(request, board.State, Port).ToBytes(), cancellation);
            socket.Shutdown(SocketShutdown.Send);
            await PartAsync(stream, cancellation);
        }
        catch (Exception exception) when (exception is IOException or SocketException or OperationCanceledException)
        {
        }
        finally
        {
            free.Release();
        }
    }

    private static async Task<HttpRequest?> ReadAsync(NetworkStream stream, CancellationToken cancellation)
    {
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        limit.CancelAfter(Asking);
        var buffer = new byte[LargestHead];
        for (var count = 0; count < buffer.Length;)
        {
            var more = await stream.ReadAsync(buffer.AsMemory(count), limit.Token);
            if (more == 0)
                return null;
            count += more;
            var end = buffer.AsSpan(0, count).IndexOf("\r\n\r\n"u8);
            if (end >= 0)
                return HttpRequest.Parse(Encoding.Latin1.GetString(buffer, 0, end));
        }

        return null;
    }

    /// <summary>What a browser still sends is taken in, since closing on it would make it lose the answer.</summary>
    private static async Task PartAsync(NetworkStream stream, CancellationToken cancellation)
    {
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        limit.CancelAfter(Parting);
        var buffer = new byte[4096];
        while (await stream.ReadAsync(buffer, limit.Token) > 0)
        {
        }
    }
}
