using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using System.Globalization;
using Endurance.Cli.Arguments;
using Endurance.Cli.Commands;
using Endurance.Cli.Output;
using Endurance.Simulation;

namespace Endurance.Cli;

/// <summary>The program without the process around it: arguments and writers in, exit code out.</summary>
internal static class CommandLine
{
    /// <summary>Never throws: what goes wrong is told in one line on <paramref name="error"/>.</summary>
    public static int Run(IReadOnlyList<string> arguments, TextWriter output, TextWriter error, Screen screen, CancellationToken cancellation)
    {
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        try
        {
            var code = Dispatch(arguments, output, error, screen, cancellation);
            output.Flush();
            return code;
        }
        catch (OperationCanceledException)
        {
            TryWrite(error, "interrupted");
            return ExitCode.Interrupted;
        }
        catch (OutputException exception)
        {
            TryWrite(error, exception.Message);
            return ExitCode.Usage;
        }
        catch (BrokenOffException exception)
        {
            TryWrite(error, exception.Message);
            return ExitCode.Of(exception.BreakOff);
        }
        catch (IOException exception)
        {
            TryWrite(error, $"could not write the result: {OneLine(exception.Message)}");
            return ExitCode.Failed;
        }
        catch (Exception exception)
        {
            TryWrite(error, $"internal error, please report it: {exception.GetType().Name}: {OneLine(exception.Message)}");
            return ExitCode.Failed;
        }
    }

    private static int Dispatch(IReadOnlyList<string> arguments, TextWriter output, TextWriter error, Screen screen, CancellationToken cancellation)
    {
        var root = Root(screen);
        if (arguments.Count == 0)
        {
            Invoke(root.Parse(["--help"], Parser), error, error, cancellation);
            return ExitCode.Usage;
        }

        var parse = root.Parse(arguments, Parser);
        if (parse.Action is not ParseErrorAction && (parse.Errors.Count == 0 || parse.Action is ExampleHelpAction or VersionAction))
            return Invoke(parse, output, error, cancellation);

        ParseErrorText.Write(parse, error);
        return ExitCode.Usage;
    }

    /// <summary>Response files are off, since a file may be called <c>@panel.yaml</c>.</summary>
    private static ParserConfiguration Parser => new() { ResponseFileTokenReplacer = null };

    /// <summary>Every command with its options.</summary>
    public static RootCommand Root(Screen screen)
    {
        var root = new RootCommand("Tells how many minutes each essential load of a light aircraft stays alive after an electrical failure.")
        {
            RunCommand.Create(screen),
            CompareCommand.Create(screen),
            SizeCommand.Create(screen),
            FailuresCommand.Create(screen),
            SpreadCommand.Create(screen),
            SweepCommand.Create(screen),
            WiringCommand.Create(screen),
            LoadsCommand.Create(screen),
            ReportCommand.Create(),
            WatchCommand.Create(),
            CheckCommand.Create(),
            BatteryCommand.Create(screen),
            PartsCommand.Create(screen),
            NewCommand.Create(),
            ExplainCommand.Create(screen),
            FitCommand.Create(screen),
            TestcardCommand.Create(),
            ReconcileCommand.Create(screen),
            SchemaCommand.Create(),
            CompletionCommand.Create(),
        };

        // The host of a test, or a renamed launcher, would show its own name.
        root.HelpName = "endurance";
        root.Directives.Clear();
        foreach (var option in root.Options)
        {
            if (option is HelpOption help)
            {
                help.Action = new ExampleHelpAction((HelpAction)help.Action!);
                help.Description = "Show this help.";
            }
            else if (option is VersionOption version)
            {
                version.Action = new VersionAction();
                version.Description = "Show the version.";
            }
        }

        return root;
    }

    private static int Invoke(ParseResult parse, TextWriter output, TextWriter error, CancellationToken cancellation)
    {
        var configuration = new InvocationConfiguration
        {
            Output = output,
            Error = error,
            EnableDefaultExceptionHandler = false,
            ProcessTerminationTimeout = null,
        };
        return parse.InvokeAsync(configuration, cancellation).GetAwaiter().GetResult();
    }

    /// <summary>The last resort: when the error stream fails too, the exit code alone has to tell.</summary>
    private static void TryWrite(TextWriter error, string message)
    {
        try
        {
            error.WriteLine($"endurance: {message}");
            error.Flush();
        }
        catch (IOException)
        {
        }
    }

    private static string OneLine(string text) => text.ReplaceLineEndings(" ");
}
