using System.Security.Cryptography;
using System.Text;

namespace Endurance.Cli.Output;

/// <summary>The list of the files that the program itself wrote into a folder: one a line, its name and the SHA-256 of what was written, sorted.</summary>
/// <remarks>
/// It decides what may be replaced and deleted, so a name that leads out of the folder is never taken from it, and a file that somebody
/// has changed since, such as a card that was filled in, counts as theirs. A name without a digest stands for any content.
/// </remarks>
internal static class OutputManifest
{
    public const string Name = ".endurance-files";

    /// <summary>Longest list that is read; a longer one was not written by this program.</summary>
    private const long LongestBytes = 1 << 20;

    private const char Separator = '\t';
    private const string AnyContent = "";

    /// <summary>Digests by name; none when there is no list. While a run is moving its files a name can have two.</summary>
    /// <exception cref="OutputException">The list holds something that is not the name of a file in this folder.</exception>
    public static ILookup<string, string> Read(string folder)
    {
        var path = Path.Combine(folder, Name);
        if (!File.Exists(path))
            return NoFiles();
        if (new FileInfo(path).Length > LongestBytes)
            throw Damaged(path, "is too long");

        var entries = new List<(string Name, string Digest)>();
        foreach (var line in File.ReadLines(path).Where(line => line.Length > 0))
        {
            var parts = line.Split(Separator, 2);
            if (!IsPlain(parts[0]))
                throw Damaged(path, $"names '{Printable(parts[0])}', which is no file of this folder");

            entries.Add((parts[0], parts.Length > 1 ? parts[1] : AnyContent));
        }

        return entries.ToLookup(entry => entry.Name, entry => entry.Digest, StringComparer.Ordinal);
    }

    public static OutputFile For(IEnumerable<(string Name, string Digest)> files)
    {
        var lines = files.Distinct().Select(file => file.Digest.Length == 0 ? file.Name : file.Name + Separator + file.Digest);
        var text = string.Concat(lines.Order(StringComparer.Ordinal).Select(line => line + "\n"));
        return new OutputFile(Name, stream => stream.Write(Encoding.UTF8.GetBytes(text)));
    }

    /// <summary>Whether a file that exists is as the program wrote it.</summary>
    public static bool IsOwn(ILookup<string, string> listed, string folder, string name)
    {
        var digests = listed[name].ToList();
        return digests.Contains(AnyContent) || (digests.Count > 0 && digests.Contains(Digest(Path.Combine(folder, name))));
    }

    /// <summary>SHA-256 of a file's content, lower-case hexadecimal.</summary>
    public static string Digest(string path)
    {
        using var stream = File.OpenRead(path);
        return Convert.ToHexStringLower(SHA256.HashData(stream));
    }

    /// <summary>Whether a text names a file inside a folder and nothing else, on any system.</summary>
    public static bool IsPlain(string name) =>
        name.Length is > 0 and <= 255
        && name is not ("." or "..")
        && !string.Equals(name, Name, StringComparison.OrdinalIgnoreCase)
        && !name.Any(letter => letter is '/' or '\\' or ':' || char.IsControl(letter))
        && !Path.IsPathRooted(name);

    private static ILookup<string, string> NoFiles() => Array.Empty<string>().ToLookup(name => name, StringComparer.Ordinal);

    private static OutputException Damaged(string path, string why) =>
        new($"{path} {why}; delete that list and run again with --force");

    private static string Printable(string text) =>
        string.Concat(text.Take(80).Select(letter => char.IsControl(letter) ? '?' : letter));
}
