namespace Endurance.Tests.Architecture;

/// <summary>The source tree that these tests were built from.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    /// <summary>Every C# file under a folder of the root, build output aside; paths relative to the root, with forward slashes.</summary>
    public static IEnumerable<string> Sources(string folder) => Directory
        .EnumerateFiles(Path.Combine(Root, folder), "*.cs", SearchOption.AllDirectories)
        .Select(path => Path.GetRelativePath(Root, path).Replace('\\', '/'))
        .Where(path => !path.Split('/').Any(part => part is "bin" or "obj"))
        .Order(StringComparer.Ordinal);

    public static string[] Lines(string path) => File.ReadAllLines(Path.Combine(Root, path));

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Endurance.sln")))
                return folder.FullName;
        }

        throw new InvalidOperationException($"No Endurance.sln above {AppContext.BaseDirectory}.");
    }
}
