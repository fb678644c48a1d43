namespace Endurance.Cli.Tests;

/// <summary>An empty folder of its own for one test, removed at its end.</summary>
public sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("endurance-test-").FullName;

    public string this[string name] => System.IO.Path.Combine(Path, name);

    public string Write(string name, string text)
    {
        File.WriteAllText(this[name], text);
        return this[name];
    }

    /// <summary>Names of everything in a folder, sorted; empty when there is no such folder.</summary>
    public static string[] Names(string folder) =>
        Directory.Exists(folder) ? [.. Directory.GetFileSystemEntries(folder).Select(System.IO.Path.GetFileName).Order(StringComparer.Ordinal)!] : [];

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
