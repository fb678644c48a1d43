using Endurance.Cli.Arguments;

namespace Endurance.Cli.Commands;

/// <summary>Names of parts on the command line.</summary>
internal static class PartName
{
    /// <summary>Why a name is not one of a kind of part; <see langword="null"/> when it is.</summary>
    public static string? Unknown(string option, string kind, string kinds, string name, IReadOnlyCollection<string> known) => known.Contains(name, StringComparer.Ordinal)
        ? null
        : $"{option}: there is no {kind} '{name}'.{NearestWord.Hint(name, known)} The {kinds} are: {string.Join(", ", known)}.";
}
