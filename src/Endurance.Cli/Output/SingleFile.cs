namespace Endurance.Cli.Output;

/// <summary>Writes one file where the user asks for it.</summary>
internal static class SingleFile
{
    /// <exception cref="OutputException">It exists and may not be replaced, or cannot be written.</exception>
    public static void Write(string path, string text, bool force)
    {
        if (Directory.Exists(path))
            throw new OutputException($"{path} is a folder");

        if (File.Exists(path) && !force)
            throw new OutputException($"{path} exists already; choose another name, or replace it with --force");

        if (Path.GetDirectoryName(path) is { Length: > 0 } folder && !Directory.Exists(folder))
            throw new OutputException($"there is no folder {folder}");

        var partial = path + ".endurance-partial";
        try
        {
            File.Delete(partial);
            File.WriteAllText(partial, text);
            File.Move(partial, path, overwrite: force);
        }
        catch (Exception exception) when (OutputException.IsDisk(exception))
        {
            OutputFolder.TryDelete(partial);
            throw new OutputException($"cannot write {path}: {exception.Message.ReplaceLineEndings(" ")}");
        }
    }
}
