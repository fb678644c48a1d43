using System.Security.Cryptography;
using Endurance.Cli.Output;

namespace Endurance.Cli.Watching;

/// <summary>What a file held at one moment.</summary>
/// <param name="Bytes">All of it, or the beginning of one that is too large to be a scenario; <see langword="null"/>: it could not be read.</param>
/// <param name="Fault">Why it could not be read, in words; empty when it could.</param>
internal sealed record FileLook(byte[]? Bytes, string Fault)
{
    private const int Most = (1024 * 1024) + 1;

    /// <summary>The same for the same contents: SHA-256 of them, or what is wrong.</summary>
    public string Version { get; } = Bytes is null ? Fault.Replace(' ', '-') : Convert.ToHexStringLower(SHA256.HashData(Bytes));

    public static FileLook At(string path)
    {
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            var buffer = new byte[Math.Min(Most, stream.Length + 1)];
            var count = stream.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false);
            return new FileLook(buffer[..count], "");
        }
        catch (Exception exception) when (exception is FileNotFoundException or DirectoryNotFoundException)
        {
            return new FileLook(null, "there is no such file");
        }
        catch (Exception exception) when (OutputException.IsDisk(exception))
        {
            return new FileLook(null, "the file cannot be read");
        }
    }
}
