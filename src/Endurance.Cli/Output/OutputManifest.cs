using System.Text;

namespace Endurance.Cli.Output;

/// <summary>The list of the files that the program itself wrote into a folder: one name a line, sorted.</summary>
/// <remarks>It decides what may be replaced and deleted, so a name that leads out of the folder is never taken from it.</remarks>
internal static class OutputManifest
{
    public const string Name = ".endurance-files";

    /// <summary>Longest list that is read; a longer one was not written by this program.</summary>
    private const long LongestBytes = 1 << 20;

    /// <summary>Empty when there is no list.</summary>
    /// <exception cref="OutputException">The list holds something that is not the name of a file in this folder.</exception>
    public static IReadOnlySet<string> Read(string folder)
    {
        var path = Path.Combine(folder, Name);
        var names = new HashSet<string>(StringComparer.Ordinal);
        if (!File.Exists(path))
            return names;

        if (new FileInfo(path).Length > LongestBytes)
            throw Damaged(path, "is too long");

        foreach (var line in File.ReadLines(path).Where(line => line.Length > 0))
        {
            if (!IsPlain(line))
                throw Damaged(path, $"names '{Printable(line)}', which is no file of this folder");

            names.Add(line);
        }

        return names;
    }

    public static OutputFile For(IEnumerable<string> names)
    {
        var text = string.Concat(names.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).Select(name => name + "\n"));
        return new OutputFile(Name, stream => stream.Write(Encoding.UTF8.GetBytes(text)));
    }

    /// <summary>Whether a text names a file inside a folder and nothing else, on any system.</summary>
    public static bool IsPlain(string name) =>
        name.Length is > 0 and <= 255
        && name is not ("." or "..")
        && !string.Equals(name, Name, StringComparison.OrdinalIgnoreCase)
        && !name.Any(letter => letter is '/' or '\\' or ':' || char.IsControl(letter))
        && !Path.IsPathRooted(name);

    private static OutputException Damaged(string path, string why) =>
        new($"{path} {why}; delete that list and run again with --force");

    private static string Printable(string text) =>
        string.Concat(text.Take(80).Select(letter => char.IsControl(letter) ? '?' : letter));
}
