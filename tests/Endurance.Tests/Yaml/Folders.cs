using System.Runtime.CompilerServices;

namespace Endurance.Tests.Yaml;

/// <summary>Where the test data lies in the source tree.</summary>
internal static class Folders
{
    public static string Broken => Path.Combine(Here(), "Broken");

    public static string Scenarios => Path.GetFullPath(Path.Combine(Here(), "..", "..", "..", "scenarios"));

    private static string Here([CallerFilePath] string path = "") => Path.GetDirectoryName(path)!;
}
