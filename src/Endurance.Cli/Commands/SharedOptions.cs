using System.CommandLine;
using Endurance.Cli.Arguments;

namespace Endurance.Cli.Commands;

/// <summary>Options that mean the same in every command; each call makes a new one, since an option belongs to its command.</summary>
internal static class SharedOptions
{
    /// <param name="formats">The first is the default.</param>
    public static Option<string> Format(params string[] formats) =>
        Choice.Option("--format", "FORMAT", $"How the result is written: {string.Join(", ", formats)}. Default: {formats[0]}.", formats);

    /// <param name="content">What is written, as in "plots (PNG, SVG)".</param>
    public static Option<string?> Folder(string content) => new("--out")
    {
        Description = $"Write {content} into this folder. Without it nothing is written.",
        HelpName = "FOLDER",
        CustomParser = Word.For("--out"),
    };

    public static Option<bool> Force() => new("--force") { Description = "Replace files in the folder that this program did not write." };

    public static Option<bool> Quiet() => new("--quiet") { Description = "The first table alone, no warnings and no progress." };

    public static Option<bool> NoProgress() => new("--no-progress") { Description = "No line of progress, which otherwise shows on a terminal." };
}
