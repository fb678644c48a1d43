using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace Endurance.Cli.Tests;

/// <summary>What README.md shows is what the program does.</summary>
public sealed class ReadmeTests : IDisposable
{
    private static readonly string Text = File.ReadAllText(Path.Combine(Root(), "README.md")).ReplaceLineEndings("\n");
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Scenario_OfTheReadme_AnswersWithTheMinutesGivenThere()
    {
        var scenario = Regex.Match(Text, "```yaml\n(?<text>.*?)```", RegexOptions.Singleline, TimeSpan.FromSeconds(1)).Groups["text"].Value;

        var run = ProgramRun.InProcess("run", _folder.Write("small.yaml", scenario));

        Assert.Empty(run.Error);
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("132.7  display lost", run.Output, StringComparison.Ordinal);
        Assert.Contains("128.9  essential_bus below its cutoff", run.Output, StringComparison.Ordinal);
        Assert.Contains("runs for 132.7 min", Text, StringComparison.Ordinal);
        Assert.Contains("its cutoff at 128.9 min", Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Table_OfTheReadme_HoldsTheNumbersOfTheFloatplane()
    {
        var run = ProgramRun.InProcess("run", Path.Combine(Root(), "scenarios", "floatplane.yaml"), "--quiet");

        foreach (var name in new[] { "alternator_failure ", "alternator_failure_unnoticed " })
            Assert.Equal(Words(Text, name), Words(run.Output, name));
    }

    [Fact]
    public void Pictures_OfTheReadme_Exist()
    {
        var pictures = Regex.Matches(Text, @"!\[[^\]]+\]\((?<path>[^)]+)\)", RegexOptions.None, TimeSpan.FromSeconds(1));

        Assert.Equal(2, pictures.Count);
        Assert.All(pictures, picture => Assert.True(File.Exists(Path.Combine(Root(), picture.Groups["path"].Value)), picture.Value));
    }

    private static string[] Words(string text, string start) =>
        text.Split('\n').First(line => line.StartsWith(" " + start, StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static string Root([CallerFilePath] string path = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(path)!, "..", ".."));
}
