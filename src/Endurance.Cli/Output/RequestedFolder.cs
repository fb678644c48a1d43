using System.Collections.Immutable;

namespace Endurance.Cli.Output;

/// <summary>What <c>--out</c> asks for.</summary>
internal static class RequestedFolder
{
    /// <param name="folder"><see langword="null"/>: nothing is written.</param>
    /// <param name="files">Called when a folder is asked for.</param>
    /// <param name="force">See <see cref="OutputFolder.Write"/>.</param>
    /// <param name="told">Hears how much was written; <see langword="null"/>: nobody does.</param>
    /// <param name="cancellation">Leaves the folder as it was.</param>
    /// <exception cref="OutputException">The folder cannot be used; it is left as it was.</exception>
    public static void Write(string? folder, Func<ImmutableArray<OutputFile>> files, bool force, TextWriter? told, CancellationToken cancellation)
    {
        if (folder is null)
            return;
        var wanted = files();
        OutputFolder.Write(folder, wanted, force, cancellation);
        told?.WriteLine($"wrote {wanted.Length} {(wanted.Length == 1 ? "file" : "files")} to {folder}");
    }
}
