using System.Text;
using Endurance.Yaml.Diagnostics;
using static System.FormattableString;

namespace Endurance.Yaml.Documents;

/// <summary>Reads a file as strict UTF-8 within the size limit.</summary>
internal static class FileText
{
    private const int Mebibyte = 1024 * 1024;

    /// <summary>Milliseconds that a pipe has for its writer to come.</summary>
    private const int LongestWait = 1000;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <param name="path">As the user named it.</param>
    /// <param name="diagnostics">Gets what is wrong.</param>
    /// <param name="what">What the file should be, for messages.</param>
    /// <param name="largestMebibytes">Size limit.</param>
    /// <returns><see langword="null"/> after a diagnostic.</returns>
    public static string? Read(string path, DiagnosticList diagnostics, string what = "a scenario file", int largestMebibytes = TextGuards.LargestSize / Mebibyte)
    {
        var bytes = ReadBytes(path, diagnostics, what, largestMebibytes);
        return bytes is null ? null : Decode(bytes, diagnostics);
    }

    /// <summary>Text of a file that has been read already.</summary>
    /// <param name="bytes">Its contents.</param>
    /// <param name="diagnostics">Gets what is wrong.</param>
    /// <returns><see langword="null"/> after a diagnostic.</returns>
    public static string? Of(byte[] bytes, DiagnosticList diagnostics)
    {
        if (bytes.Length <= TextGuards.LargestSize)
            return Decode(bytes, diagnostics);
        TooLarge(diagnostics, TextGuards.LargestSize / Mebibyte);
        return null;
    }

    private static byte[]? ReadBytes(string path, DiagnosticList diagnostics, string what, int largestMebibytes)
    {
        try
        {
            if (Directory.Exists(path))
            {
                diagnostics.Error("file-unreadable", SourceSpan.Nowhere, "this is a folder, not a file", what);
                return null;
            }

            using var stream = Open(path);
            if (stream is null)
            {
                diagnostics.Error("file-unreadable", SourceSpan.Nowhere, "nothing writes into this pipe", what);
                return null;
            }

            var largest = largestMebibytes * Mebibyte;
            var buffer = new byte[largest + 1];
            var count = stream.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false);
            if (count <= largest)
                return buffer[..count];
            TooLarge(diagnostics, largestMebibytes);
        }
        catch (Exception fault) when (fault is FileNotFoundException or DirectoryNotFoundException)
        {
            diagnostics.Error("file-not-found", SourceSpan.Nowhere, "there is no such file", $"the path of {what}");
        }
        catch (UnauthorizedAccessException)
        {
            diagnostics.Error("file-unreadable", SourceSpan.Nowhere, "the file may not be read: permission denied", "a file that you may read");
        }
        catch (Exception fault) when (fault is IOException or ArgumentException or NotSupportedException)
        {
            diagnostics.Error("file-unreadable", SourceSpan.Nowhere, "the file cannot be read", $"the path of {what}");
        }

        return null;
    }

    private static void TooLarge(DiagnosticList diagnostics, int mebibytes) =>
        diagnostics.Error("file-too-large", SourceSpan.Nowhere, Invariant($"the file is larger than {mebibytes} MiB"), Invariant($"a file of at most {mebibytes} MiB"));

    /// <summary><see langword="null"/> for a named pipe that nobody writes into: opening one waits for a writer, for ever if need be.</summary>
    private static FileStream? Open(string path)
    {
        FileStream Opened() => new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        if (new FileInfo(path) is not { Exists: true, Length: 0 })
            return Opened();
        // On a thread of its own: where all others are busy, an empty file would wait for one and pass for such a pipe.
        var opening = Task.Factory.StartNew(Opened, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        return Task.WaitAny([opening], LongestWait) == 0 ? opening.GetAwaiter().GetResult() : null;
    }

    private static string? Decode(byte[] bytes, DiagnosticList diagnostics)
    {
        // Marked as such, or without a mark but with every second byte of its first letters zero.
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] or [not 0, 0, not 0, 0, ..] or [0, not 0, 0, not 0, ..])
        {
            diagnostics.Error("not-utf8", SourceSpan.Nowhere, "the file is UTF-16 text", "UTF-8 text; save the file again as UTF-8");
            return null;
        }

        try
        {
            return Strict.GetString(bytes);
        }
        catch (DecoderFallbackException fault)
        {
            var before = bytes.AsSpan(0, Math.Clamp(fault.Index, 0, bytes.Length));
            var line = before.Count((byte)'\n') + 1;
            var lineStart = before.LastIndexOf((byte)'\n') + 1;
            var column = Encoding.UTF8.GetCharCount(before[lineStart..]) + 1;
            diagnostics.Error("not-utf8", new SourceSpan(line, column, 1), "the file is not UTF-8 text here", "UTF-8 text; save the file again as UTF-8");
            return null;
        }
    }
}
