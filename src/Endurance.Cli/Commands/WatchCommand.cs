using System.CommandLine;
using System.Net.Sockets;
using Endurance.Cli.Arguments;
using Endurance.Cli.Watching;

namespace Endurance.Cli.Commands;

/// <summary><c>endurance watch FILE</c>: the page for a reviewer, kept fresh while the file is being edited.</summary>
internal static class WatchCommand
{
    public static Command Create()
    {
        var file = ScenarioFile.Argument();
        var port = new Option<int>("--port")
        {
            Description = "Where the page is on 127.0.0.1; 0 takes any free port. Default: 0.",
            HelpName = "NUMBER",
            CustomParser = WholeNumber.Between("--port", 0, 65535),
        };
        var command = new Command("watch", "Shows the report in a browser and runs it again on every save.") { file, port };
        command.SetAction((parse, cancellation) =>
            ExecuteAsync(parse.GetRequiredValue(file), parse.GetValue(port), parse.InvocationConfiguration.Output, parse.InvocationConfiguration.Error, cancellation));
        return command;
    }

    private static async Task<int> ExecuteAsync(string path, int port, TextWriter output, TextWriter error, CancellationToken cancellation)
    {
        var first = FileLook.At(path);
        if (first.Bytes is null)
        {
            error.WriteLine($"endurance: {path}: {first.Fault}");
            return ExitCode.Usage;
        }

        LoopbackServer server;
        try
        {
            server = LoopbackServer.Listen(port);
        }
        catch (SocketException exception)
        {
            error.WriteLine(exception.SocketErrorCode == SocketError.AddressAlreadyInUse
                ? $"endurance: --port: {port} is in use; choose another, or leave it out for a free one."
                : $"endurance: --port: cannot listen on 127.0.0.1:{port}: {exception.Message.ReplaceLineEndings(" ")}");
            return ExitCode.Usage;
        }

        using (server)
        {
            output.WriteLine($"http://127.0.0.1:{server.Port}/ shows {path}; Ctrl-C ends the watch");
            output.Flush();
            return await WatchAsync(path, first, server, error, cancellation);
        }
    }

    /// <summary>A watch has no other end than being stopped, so that is a success.</summary>
    private static async Task<int> WatchAsync(string path, FileLook first, LoopbackServer server, TextWriter error, CancellationToken cancellation)
    {
        var board = new WatchBoard(WatchState.Before(Path.GetFileName(path)));
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        Task[] work = [server.ServeAsync(board, stop.Token), new ScenarioWatch(path, board, error).FollowAsync(first, stop.Token)];
        try
        {
            await await Task.WhenAny(work);
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
        }
        finally
        {
            await stop.CancelAsync();
            await Task.WhenAll(work).ContinueWith(_ => { }, TaskScheduler.Default);
        }

        error.WriteLine("watch ended");
        return ExitCode.Met;
    }
}
