using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using Endurance.Cli;

CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.InvariantCulture;
var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
if (OperatingSystem.IsWindows())
    Console.OutputEncoding = utf8;

using var interruption = new CancellationTokenSource();
using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);

// Not disposed: the command flushes them, and a second flush of a stream that has failed would fail again, unheard.
var output = new StreamWriter(Console.OpenStandardOutput(), utf8) { NewLine = "\n" };
var screen = Screen.OfProcess();
var stream = new StreamWriter(Console.OpenStandardError(), utf8) { NewLine = "\n", AutoFlush = true };
TextWriter error = screen.IsAscii ? new AsciiWriter(stream) : stream;

// Work that does not look at the token, such as a read from a pipe that never ends, gets a moment and is then left behind.
var command = Task.Run(() => CommandLine.Run(args, output, error, screen, interruption.Token));
var overdue = new TaskCompletionSource();
interruption.Token.Register(() => Task.Delay(TimeSpan.FromSeconds(1)).ContinueWith(_ => overdue.TrySetResult(), TaskScheduler.Default));
if (await Task.WhenAny(command, overdue.Task) == command)
    return await command;

Environment.Exit(ExitCode.Interrupted);
return ExitCode.Interrupted;

// A second signal is not held back, so a program that does not come to rest can always be ended.
void Stop(PosixSignalContext signal)
{
    signal.Cancel = !interruption.IsCancellationRequested;
    interruption.Cancel();
}
