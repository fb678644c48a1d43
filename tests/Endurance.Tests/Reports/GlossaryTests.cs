using System.Text.RegularExpressions;
using Endurance.Reports;
using Endurance.Tests.Architecture;
using Endurance.Tests.Yaml;

namespace Endurance.Tests.Reports;

public sealed partial class GlossaryTests
{
    /// <summary>Words with hyphens in the sources that are no codes.</summary>
    private static readonly string[] NoCodes = ["over-voltage"];

    [Fact]
    public void Code_OfEveryFindingAndDiagnostic_IsExplained() =>
        Explained(Found(Code(), "src/Endurance.Core", "src/Endurance.Yaml", "src/Endurance.Cli/Logs").Except(NoCodes, StringComparer.Ordinal), "finding or diagnostic", atLeast: 90);

    [Fact]
    public void Key_OfEverySection_IsExplained() =>
        Explained(KnownKeyTests.Sections.SelectMany(section => section.Keys).Select(key => key.Name), "scenario key", atLeast: 130);

    [Fact]
    public void Column_OfEveryReport_IsExplained() => Explained(Found(ColumnHead(), "src/Endurance.Reports"), "column head", atLeast: 40);

    [Fact]
    public void Column_OfTheTableForSpreadsheets_IsExplained() =>
        Explained(FailureCaseCsv.Write(ReportFixture.Scenario, []).Split('\r')[0].Split(','), "column head", atLeast: 10);

    [Fact]
    public void Explanation_OfKeysAndColumns_HasTwoSentences() =>
        Assert.All(Glossary.All.Where(entry => entry.Kind is not "word"), entry => Assert.True(SentenceEnd().Count(entry.Text) >= 2, entry.Word));

    [Fact]
    public void Words_OfOneKind_StandOnceAndInOrder() =>
        Assert.All(Glossary.All.GroupBy(entry => entry.Kind, StringComparer.Ordinal), kind =>
            Assert.Equal(kind.Select(entry => entry.Word).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.OrdinalIgnoreCase), kind.Select(entry => entry.Word)));

    [Theory]
    [InlineData("DROOP", "droop")]
    [InlineData("lost-for_good", "lost for good")]
    [InlineData("Saturation Current", "saturation_current")]
    public void Word_HoweverWritten_IsFound(string typed, string word) => Assert.Equal(word, Assert.Single(Glossary.Find(typed)).Word);

    private static void Explained(IEnumerable<string> words, string kind, int atLeast)
    {
        string[] all = [.. words.Distinct(StringComparer.Ordinal)];
        var known = Glossary.All.Where(entry => entry.Kind == kind).Select(entry => entry.Word).ToHashSet(StringComparer.Ordinal);

        Assert.True(all.Length >= atLeast, $"only {all.Length} found");
        Assert.Equal([], all.Except(known, StringComparer.Ordinal));
    }

    private static IEnumerable<string> Found(Regex pattern, params string[] folders) => folders
        .SelectMany(Repository.Sources)
        .SelectMany(Repository.Lines)
        .SelectMany(line => pattern.Matches(line))
        .Select(match => match.Groups["word"].Value);

    [GeneratedRegex("\"(?<word>[a-z0-9]+(-[a-z0-9]+)+)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Code();

    [GeneratedRegex("([\\[(,] *|^ *)new\\(\"(?<word>[A-Za-z][A-Za-z ,]*)\"(, \"[^\"]*\")?\\)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex ColumnHead();

    [GeneratedRegex("[.]( |$)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex SentenceEnd();
}
