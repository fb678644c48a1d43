using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace Endurance.Cli.Tests;

/// <summary>The examples of the help are lines that work.</summary>
public sealed partial class HelpExampleTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string> Examples => [.. CommandLine.Root(Screen.Plain).Subcommands.Select(command => command.Name).Append("").SelectMany(Of).Distinct(StringComparer.Ordinal)];

    public static TheoryData<string> Commands => [.. CommandLine.Root(Screen.Plain).Subcommands.Select(command => command.Name)];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Commands))]
    public void Help_OfEveryCommand_HasAnExample(string command) => Assert.NotEmpty(Of(command));

    [Theory]
    [MemberData(nameof(Examples))]
    public void Example_OfTheHelp_Parses(string example) => Assert.Empty(CommandLine.Root(Screen.Plain).Parse(Words(example)).Errors);

    [Theory]
    [MemberData(nameof(Examples))]
    public void Example_OnAShippedScenario_Runs(string example)
    {
        var words = Words(example).Select(Placed).ToArray();
        if (words.Any(word => word.EndsWith(".yaml", StringComparison.Ordinal) && !File.Exists(word) && words[0] is not "new") || words[0] is "fit" or "reconcile" or "watch")
            return; // what it reads is not shipped, or it runs until it is stopped

        var run = ProgramRun.InProcess(words);

        Assert.DoesNotContain("endurance: ", run.Error, StringComparison.Ordinal);
        Assert.InRange(run.ExitCode, 0, 1);
    }

    private static IEnumerable<string> Of(string command)
    {
        string[] words = command.Length == 0 ? ["--help"] : [command, "--help"];
        return Line().Matches(ProgramRun.InProcess(words).Output.Split("Examples:")[1]).Select(match => match.Groups["line"].Value);
    }

    private static string[] Words(string example) => [.. Word().Matches(example).Select(match => match.Value.Trim('"')).TakeWhile(word => !word.StartsWith('>'))];

    /// <summary>Shipped files where they lie, what is written in a folder of its own, and few samples, since the line is tried and not the answer.</summary>
    private string Placed(string word)
    {
        if (word is "10000")
            return "20";
        var shipped = Path.Combine(Root(), "scenarios", word);
        if (File.Exists(shipped))
            return shipped;
        return word.StartsWith("out/", StringComparison.Ordinal) || word.EndsWith(".html", StringComparison.Ordinal) || word is "mine.yaml" ? _folder[Path.GetFileName(word)] : word;
    }

    private static string Root([CallerFilePath] string path = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(path)!, "..", ".."));

    [GeneratedRegex("^  endurance (?<line>.+)$", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Line();

    [GeneratedRegex("\"[^\"]*\"|\\S+", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Word();
}
