using System.Reflection;

namespace Endurance.Tests.Reports;

/// <summary>Whole expected texts kept beside the tests.</summary>
/// <remarks>To accept a change, run with ENDURANCE_GOLDEN set to the Golden folder and read the difference before committing it.</remarks>
internal static class GoldenText
{
    /// <summary>Compares line by line, without regard to spaces at the end of a line.</summary>
    public static void AssertMatches(string name, string actual)
    {
        if (Environment.GetEnvironmentVariable("ENDURANCE_GOLDEN") is { Length: > 0 } folder)
        {
            // Written instead of compared: a test may have several texts.
            File.WriteAllText(Path.Combine(folder, name), string.Join('\n', Lines(actual)) + "\n");
            return;
        }

        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("Golden." + name)
            ?? throw new InvalidOperationException($"There is no expected text named {name}.");
        using var reader = new StreamReader(stream);
        Assert.Equal(Lines(reader.ReadToEnd()), Lines(actual));
    }

    private static string[] Lines(string text) => [.. text.TrimEnd().Split('\n').Select(line => line.TrimEnd())];
}
