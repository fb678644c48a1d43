namespace Endurance.Cli.Output;

/// <summary>A file to write.</summary>
/// <param name="Name">Without any folder.</param>
/// <param name="Write">Writes the whole content; called once.</param>
internal sealed record OutputFile(string Name, Action<Stream> Write);
