using System.Collections.Immutable;

namespace Endurance.Cli.Completion;

/// <summary>An option as a shell completes it.</summary>
/// <param name="Names">The long name first.</param>
/// <param name="Description">One sentence, without its full stop.</param>
/// <param name="Label">What the help calls its value; empty without one.</param>
/// <param name="Kind">What follows it.</param>
/// <param name="Words">For <see cref="WordKind.Listed"/>.</param>
/// <param name="IsRepeatable">Whether it may be given several times.</param>
internal sealed record CompletedOption(ImmutableArray<string> Names, string Description, string Label, WordKind Kind, ImmutableArray<string> Words, bool IsRepeatable);
