using System.CommandLine;
using System.CommandLine.Invocation;

namespace Endurance.Cli;

/// <summary>Prints the program's name and version.</summary>
internal sealed class VersionAction : SynchronousCommandLineAction
{
    /// <summary>Major, minor and patch.</summary>
    public static string Version => typeof(VersionAction).Assembly.GetName().Version?.ToString(fieldCount: 3) ?? "unknown";

    public override int Invoke(ParseResult parseResult)
    {
        parseResult.InvocationConfiguration.Output.WriteLine($"endurance {Version}");
        return ExitCode.Met;
    }
}
