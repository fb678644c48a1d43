using System.CommandLine;

namespace Endurance.Cli.Commands;

/// <summary>Gives a command its work.</summary>
internal static class CommandWork
{
    /// <summary>Calls <paramref name="work"/> with the writers for the result and for what went wrong; its answer is the exit code.</summary>
    public static void Answers(this Command command, Func<ParseResult, TextWriter, TextWriter, CancellationToken, int> work) =>
        command.SetAction((parse, cancellation) =>
            Task.FromResult(work(parse, parse.InvocationConfiguration.Output, parse.InvocationConfiguration.Error, cancellation)));
}
