using System.Collections.Immutable;

namespace Endurance.Reports.Diagram;

/// <summary>A bus and what is written below its name.</summary>
/// <param name="Name">Of the bus.</param>
/// <param name="Lines">Loads and what watches the bus.</param>
internal sealed record DiagramRow(string Name, ImmutableArray<string> Lines);
