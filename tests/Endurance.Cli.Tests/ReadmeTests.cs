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

    [Fact]
    public void WalkThrough_OfTheReadme_RunsInOrder()
    {
        var block = Regex.Match(Text, "## From a blank page.*?```\n(?<lines>.*?)```", RegexOptions.Singleline, TimeSpan.FromSeconds(1)).Groups["lines"].Value;
        var lines = block.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(9, lines.Length);

        foreach (var line in lines)
        {
            var run = ProgramRun.InProcess([.. line.Split(' ').Skip(1).Select(Placed)]);

            Assert.True(run.ExitCode is 0 or 1, $"{line}: {run.ExitCode} {run.Error}"); // 1: some failure of a part loses a requirement
            if (line.Contains("testcard", StringComparison.Ordinal))
                FillIn(_folder["card/testcard.csv"]);
        }

        Assert.Contains("basis: measured", File.ReadAllText(_folder["measured/measured.yaml"]), StringComparison.Ordinal);
        Assert.Contains("measured.yaml", File.ReadAllText(_folder["mine.html"]), StringComparison.Ordinal);
    }

    /// <summary>Every reading as predicted.</summary>
    private static void FillIn(string card)
    {
        var filled = File.ReadAllLines(card).Select(line => line.Split(',')).Select((cells, row) =>
        {
            if (row > 0 && cells is [.., _, _, "", _])
                cells[^2] = cells[^4];
            return string.Join(',', cells);
        });
        File.WriteAllLines(card, filled.ToArray());
    }

    private string Placed(string word) => word is "mine.yaml" or "plan" or "card" or "card/testcard.csv" or "measured" or "measured/measured.yaml" or "mine.html" ? _folder[word] : word;

    private static string[] Words(string text, string start) =>
        text.Split('\n').First(line => line.StartsWith(" " + start, StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static string Root([CallerFilePath] string path = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(path)!, "..", ".."));
}
