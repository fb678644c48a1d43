using System.Text.RegularExpressions;

namespace Endurance.Tests.Architecture;

/// <summary>Sizes and places of the files themselves.</summary>
public sealed partial class SourceTreeTests
{
    private const int MostLines = 300;

    private static readonly string[] AllowedAtTheTop =
    [
        "README.md", "DEVELOPERS.md", "LICENSE", "Endurance.sln", "src", "tests", "scenarios", "plots",
        "Directory.Build.props", "Directory.Packages.props", "global.json",
    ];

    [Fact]
    public void SourceFiles_Lines_AreAtMostThreeHundred()
    {
        var tooLong = Sources().Select(path => (Path: path, Lines: Repository.Lines(path).Length))
            .Where(file => file.Lines > MostLines)
            .Select(file => $"{file.Path}: {file.Lines}");

        Assert.Empty(tooLong);
    }

    [Fact]
    public void SourceFiles_PublicTypes_AreOneAFile()
    {
        var crowded = Sources()
            .Where(path => Repository.Lines(path).Count(line => PublicType().IsMatch(line)) > 1);

        Assert.Empty(crowded);
    }

    [Fact]
    public void SourceFiles_WithAType_AreNamedAfterIt()
    {
        var misnamed = Repository.Sources("src")
            .Select(path => (Path: path, Types: Repository.Lines(path).Select(line => TopLevelType().Match(line)).Where(match => match.Success).Select(match => match.Groups["name"].Value).ToList()))
            .Where(file => file.Types.Count > 0 && !file.Types.Contains(Path.GetFileNameWithoutExtension(file.Path), StringComparer.Ordinal))
            .Select(file => $"{file.Path}: {string.Join(", ", file.Types)}");

        Assert.Empty(misnamed);
    }

    [Fact]
    public void TypeNames_Everywhere_SayWhatTheTypeIs()
    {
        var vague = Repository.Sources("src")
            .SelectMany(Repository.Lines)
            .Select(line => TopLevelType().Match(line).Groups["name"].Value)
            .Where(name => VagueName().IsMatch(name));

        Assert.Empty(vague);
    }

    [Fact]
    public void TopOfTheRepository_Entries_AreTheAgreedOnes()
    {
        var ignored = File.ReadLines(Path.Combine(Repository.Root, ".gitignore")).Select(line => line.TrimEnd('/')).ToList();
        var strangers = Directory.EnumerateFileSystemEntries(Repository.Root)
            .Select(path => Path.GetFileName(path))
            .Where(name => !name.StartsWith('.') && !AllowedAtTheTop.Contains(name, StringComparer.Ordinal) && !ignored.Contains(name, StringComparer.Ordinal));

        Assert.Empty(strangers);
    }

    private static IEnumerable<string> Sources() => Repository.Sources("src").Concat(Repository.Sources("tests"));

    [GeneratedRegex(@"^public\s.*\b(class|record|struct|interface|enum|delegate)\b", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex PublicType();

    [GeneratedRegex(@"^(public|internal)\s[^=(]*?\b(class|record struct|record|struct|interface|enum)\s+(?<name>[A-Z]\w*)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex TopLevelType();

    [GeneratedRegex(@"(Manager|Helper|Helpers|Utils|Util|Data|Calc)$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex VagueName();
}
