namespace Endurance.Reports.Diagram;

/// <summary>One part on a line.</summary>
/// <param name="Symbol">How it is drawn.</param>
/// <param name="Label">Short words beside it.</param>
/// <param name="IsClosed">Of a contact.</param>
internal sealed record DiagramPart(DiagramSymbol Symbol, string Label, bool IsClosed = true);
