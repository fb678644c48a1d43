using System.Collections.Immutable;

namespace Endurance.Reports;

/// <summary>A titled list of sentences.</summary>
/// <param name="Title">Plain text.</param>
/// <param name="Items">Plain text, no line ends.</param>
public sealed record ReportList(string Title, ImmutableArray<string> Items) : ReportBlock;
