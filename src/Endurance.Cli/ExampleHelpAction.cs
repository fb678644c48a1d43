using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Endurance.Cli;

/// <summary>The generated help, with examples and exit codes below it.</summary>
internal sealed class ExampleHelpAction : SynchronousCommandLineAction
{
    private readonly HelpAction _generated;

    public ExampleHelpAction(HelpAction generated)
    {
        _generated = generated;

        // Fixed, so that the help does not depend on the window it is shown in.
        _generated.MaxWidth = 100;
    }

    public override int Invoke(ParseResult parseResult)
    {
        var output = parseResult.InvocationConfiguration.Output;
        using var generated = new StringWriter { NewLine = "\n" };
        parseResult.InvocationConfiguration.Output = generated;
        _generated.Invoke(parseResult);
        parseResult.InvocationConfiguration.Output = output;
        foreach (var line in generated.ToString().Trim().Split('\n'))
            output.WriteLine(line.TrimEnd());

        output.WriteLine();
        output.WriteLine(HelpExamples.Of(parseResult.CommandResult.Command is RootCommand ? HelpExamples.Program : parseResult.CommandResult.Command.Name));
        return ExitCode.Met;
    }
}
