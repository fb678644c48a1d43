using System.CommandLine;
using System.CommandLine.Invocation;

namespace Endurance.Cli;

/// <summary>Prints the program's name and version.</summary>
internal sealed class VersionAction : SynchronousCommandLineAction
{
    public override int Invoke(ParseResult parseResult)
    {
        var version = typeof(VersionAction).Assembly.GetName().Version?.ToString(fieldCount: 3);
        parseResult.InvocationConfiguration.Output.WriteLine($"endurance {version}");
        return ExitCode.Met;
    }
}
