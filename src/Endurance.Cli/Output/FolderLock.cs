namespace Endurance.Cli.Output;

/// <summary>Keeps other runs of the program from writing into a folder at the same time.</summary>
/// <remarks>The system lets go of the lock when the process ends in whatever way, so one that was killed locks nobody out.</remarks>
internal static class FolderLock
{
    private const string Name = ".endurance-lock";

    /// <summary>Holds the folder until it is disposed of.</summary>
    /// <param name="folder">An existing folder.</param>
    /// <exception cref="OutputException">Another run holds it.</exception>
    public static IDisposable Take(string folder)
    {
        var path = Path.Combine(folder, Name);
        try
        {
            return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
        }
        catch (IOException) when (IsHeld(path))
        {
            throw new OutputException($"another run is writing to {folder}; wait for it, or choose another folder");
        }
    }

    /// <summary>Tells a lock that is held from a disk that is full or a path that is wrong.</summary>
    private static bool IsHeld(string path)
    {
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
            return false;
        }
        catch (IOException exception)
        {
            return exception is not (FileNotFoundException or DirectoryNotFoundException);
        }
        catch (UnauthorizedAccessException)
        {
            return false;
        }
    }
}
