namespace Endurance.Cli.Output;

/// <summary>A file or folder cannot be written; the message says which and why, in one line.</summary>
internal sealed class OutputException(string message) : Exception(message)
{
    /// <summary>Whether an exception tells of the disk or the path, as against a fault of the program.</summary>
    public static bool IsDisk(Exception exception) =>
        exception is IOException or UnauthorizedAccessException;
}
