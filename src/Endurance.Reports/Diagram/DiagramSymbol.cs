namespace Endurance.Reports.Diagram;

/// <summary>What is drawn on a line.</summary>
internal enum DiagramSymbol
{
    Contact,
    Contactor,
    Breaker,
    Fuse,
    FusibleLink,
    Resistor,
    Diode,
    Charger,
    Battery,
    Alternator,
}
