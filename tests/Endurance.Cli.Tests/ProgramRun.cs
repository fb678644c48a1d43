using System.Diagnostics;
using System.Text;

namespace Endurance.Cli.Tests;

/// <summary>What one run of the program left behind.</summary>
public sealed record ProgramRun(int ExitCode, string Output, string Error)
{
    /// <summary>In this process, with writers in place of the streams.</summary>
    public static ProgramRun InProcess(params string[] arguments) => InProcess(CancellationToken.None, arguments);

    public static ProgramRun InProcess(CancellationToken cancellation, params string[] arguments)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var code = CommandLine.Run(arguments, output, error, Screen.Plain, cancellation);
        return new ProgramRun(code, output.ToString(), error.ToString());
    }

    /// <summary>As a user starts it.</summary>
    public static ProgramRun AsProcess(params string[] arguments) => AsProcess(new Dictionary<string, string>(StringComparer.Ordinal), arguments);

    public static ProgramRun AsProcess(IReadOnlyDictionary<string, string> environment, params string[] arguments)
    {
        using var process = Start(environment, arguments);
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new ProgramRun(process.ExitCode, output, error.GetAwaiter().GetResult());
    }

    /// <summary>Started, with both streams open for reading.</summary>
    public static Process Start(IReadOnlyDictionary<string, string> environment, params string[] arguments)
    {
        var start = StartInfo("dotnet", [Program, .. arguments]);
        foreach (var (name, value) in environment)
            start.Environment[name] = value;

        return Process.Start(start)!;
    }

    /// <summary>A line for the Bourne shell, in which <c>$0</c> stands for the program and <c>$1</c> onwards for the arguments.</summary>
    public static ProgramRun InShell(string line, params string[] arguments) => InShell(new Dictionary<string, string>(StringComparer.Ordinal), line, arguments);

    public static ProgramRun InShell(IReadOnlyDictionary<string, string> environment, string line, params string[] arguments)
    {
        var start = StartInfo("/bin/sh", ["-c", line, Program, .. arguments]);
        foreach (var (name, value) in environment)
            start.Environment[name] = value;

        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new ProgramRun(process.ExitCode, output, error.GetAwaiter().GetResult());
    }

    private static string Program => Path.Combine(AppContext.BaseDirectory, "endurance.dll");

    /// <summary>Without what the machine of the tests says of its terminal and language.</summary>
    private static ProcessStartInfo StartInfo(string file, IEnumerable<string> arguments)
    {
        var start = new ProcessStartInfo(file, arguments)
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
            StandardErrorEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
        };
        foreach (var name in (ReadOnlySpan<string>)["LC_ALL", "LC_CTYPE", "LANG", "NO_COLOR", "COLUMNS", "TERM"])
            start.Environment.Remove(name);
        return start;
    }
}
