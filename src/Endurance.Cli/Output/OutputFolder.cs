using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;

namespace Endurance.Cli.Output;

/// <summary>Writes a set of files into a folder, all or none, and cleans up after earlier runs into it.</summary>
/// <remarks>
/// Each file is written beside its place and then moved there, so no reader ever sees half a file. The program replaces and
/// deletes what its list (<see cref="OutputManifest"/>) says it wrote, unless somebody changed it since, and nothing else. One run at a
/// time writes into a folder (<see cref="FolderLock"/>). Before anything is moved the list
/// already holds old and new names together: a run that is killed half-way leaves nothing that the next run takes for foreign.
/// </remarks>
internal static class OutputFolder
{
    private const string PartialSuffix = ".endurance-partial";

    /// <exception cref="OutputException">The folder cannot be used; it is left as it was.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled; the folder is left as it was.</exception>
    public static void Write(string folder, IReadOnlyList<OutputFile> files, bool force, CancellationToken cancellation)
    {
        if (folder.Length == 0)
            throw new OutputException("--out needs the name of a folder");

        foreach (var file in files)
        {
            if (!OutputManifest.IsPlain(file.Name))
                throw new OutputException($"'{file.Name}' cannot be the name of a file");
        }

        try
        {
            if (File.Exists(folder))
                throw new OutputException($"{folder} is a file; --out needs a folder");

            WriteLocked(folder, files, force, cancellation);
        }
        catch (Exception exception) when (OutputException.IsDisk(exception))
        {
            throw new OutputException($"cannot write to {folder}: {exception.Message.ReplaceLineEndings(" ")}");
        }
    }

    private static void WriteLocked(string folder, IReadOnlyList<OutputFile> files, bool force, CancellationToken cancellation)
    {
        var created = MissingFolders(folder);
        try
        {
            Directory.CreateDirectory(folder);
            using var held = FolderLock.Take(folder);
            var listed = OutputManifest.Read(folder);
            RefuseForeign(folder, files, listed, force);
            WriteAll(folder, files, listed, cancellation);
        }
        catch
        {
            RemoveIfEmpty(created);
            throw;
        }
    }

    private static void RefuseForeign(string folder, IReadOnlyList<OutputFile> files, ILookup<string, string> listed, bool force)
    {
        var inTheWay = files.Select(file => file.Name).Where(name => Path.Exists(Path.Combine(folder, name))).ToList();
        if (inTheWay.Find(name => Directory.Exists(Path.Combine(folder, name))) is { } directory)
            throw new OutputException($"{Path.Combine(folder, directory)} is a folder in the way of a file");

        var foreign = force ? [] : inTheWay.Where(name => !OutputManifest.IsOwn(listed, folder, name)).ToList();
        if (foreign.Count == 0)
            return;

        var others = foreign.Count > 1 ? $" (and {foreign.Count - 1} more)" : "";
        var why = listed.Contains(foreign[0]) ? "was changed after this program wrote it" : "was not written by this program";
        throw new OutputException($"{Path.Combine(folder, foreign[0])}{others} {why}; choose another folder, or replace it with --force");
    }

    private static void WriteAll(string folder, IReadOnlyList<OutputFile> files, ILookup<string, string> listed, CancellationToken cancellation)
    {
        var names = files.Select(file => file.Name).ToHashSet(StringComparer.Ordinal);
        var before = listed.SelectMany(entry => entry.Select(digest => (Name: entry.Key, Digest: digest))).ToList();
        var partials = files.Select(file => Partial(folder, file.Name)).ToList();
        try
        {
            ClearPartials(folder);
            WriteAllBeside(folder, files, cancellation);
            cancellation.ThrowIfCancellationRequested();
            var written = files.Select(file => (file.Name, OutputManifest.Digest(Partial(folder, file.Name)))).ToList();
            Replace(folder, OutputManifest.For([.. written, .. before]), partials);
            foreach (var name in files.Select(file => file.Name))
                File.Move(Partial(folder, name), Path.Combine(folder, name), overwrite: true);

            foreach (var stale in listed.Select(entry => entry.Key).Where(name => !names.Contains(name) && File.Exists(Path.Combine(folder, name)) && OutputManifest.IsOwn(listed, folder, name)))
                File.Delete(Path.Combine(folder, stale));

            Replace(folder, OutputManifest.For(written), partials);
        }
        catch
        {
            partials.ForEach(TryDelete);
            throw;
        }
    }

    /// <summary>Takes away what runs that were killed left half written, whatever files this run writes; with the folder held, no other run needs it.</summary>
    private static void ClearPartials(string folder)
    {
        foreach (var partial in Directory.EnumerateFiles(folder, $".*{PartialSuffix}", new EnumerationOptions { AttributesToSkip = default }))
            File.Delete(partial);
    }

    /// <summary>Most of the time goes into drawing pictures, each of which stands for itself.</summary>
    private static void WriteAllBeside(string folder, IReadOnlyList<OutputFile> files, CancellationToken cancellation)
    {
        try
        {
            // File by file: a few pictures take far longer than the rest.
            Parallel.ForEach(Partitioner.Create(files, EnumerablePartitionerOptions.NoBuffering), new ParallelOptions { CancellationToken = cancellation }, file => WriteBeside(folder, file));
        }
        catch (AggregateException exception)
        {
            ExceptionDispatchInfo.Throw(exception.InnerExceptions[0]);
        }
    }

    private static void Replace(string folder, OutputFile file, List<string> partials)
    {
        partials.Add(WriteBeside(folder, file));
        File.Move(Partial(folder, file.Name), Path.Combine(folder, file.Name), overwrite: true);
    }

    private static string WriteBeside(string folder, OutputFile file)
    {
        var partial = Partial(folder, file.Name);

        // Left by a run that was killed. Deleting first also means that a link of that name is never followed.
        File.Delete(partial);
        var stream = new FileStream(partial, FileMode.CreateNew, FileAccess.Write);
        try
        {
            using (stream)
                file.Write(stream);
        }
        catch
        {
            TryDelete(partial);
            throw;
        }

        return partial;
    }

    private static string Partial(string folder, string name) => Path.Combine(folder, "." + name + PartialSuffix);

    /// <summary>The folders that have to be created, innermost first.</summary>
    private static List<string> MissingFolders(string folder)
    {
        var missing = new List<string>();
        for (var path = Path.GetFullPath(folder); path is not null && !Path.Exists(path); path = Path.GetDirectoryName(path))
            missing.Add(path);

        return missing;
    }

    private static void RemoveIfEmpty(List<string> created)
    {
        foreach (var folder in created.Where(Directory.Exists))
        {
            try
            {
                Directory.Delete(folder);
            }
            catch (Exception exception) when (OutputException.IsDisk(exception))
            {
                // Somebody else has put something there meanwhile, so it stays.
                return;
            }
        }
    }

    /// <summary>Quiet, because the reason for cleaning up is what the user has to hear of.</summary>
    internal static void TryDelete(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception exception) when (OutputException.IsDisk(exception))
        {
        }
    }
}
