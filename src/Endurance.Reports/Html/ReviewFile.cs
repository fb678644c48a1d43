namespace Endurance.Reports.Html;

/// <summary>A file that the page was made from.</summary>
/// <param name="Name">Without a folder.</param>
/// <param name="Text">The whole file.</param>
/// <param name="Hash">SHA-256 of the file's bytes, lower-case hexadecimal.</param>
public sealed record ReviewFile(string Name, string Text, string Hash);
