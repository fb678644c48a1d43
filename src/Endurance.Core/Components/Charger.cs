using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>A one-way regulated path: takes power from one bus and gives it to another at its own voltage.</summary>
/// <remarks>Output amperes are (output - v)/droop between 0 and the limit; the input takes v_out i / efficiency as constant power.</remarks>
public sealed record Charger
{
    public required string Name { get; init; }

    public required string From { get; init; }

    public required string To { get; init; }

    /// <summary>Regulated output voltage at no load; above zero.</summary>
    public required Voltage Output { get; init; }

    /// <summary>Output current limit; above zero.</summary>
    public required Current Limit { get; init; }

    /// <summary>Above 0, at most 1.</summary>
    public required double Efficiency { get; init; }

    /// <summary>Fall of output voltage per ampere; above zero.</summary>
    public required Resistance Droop { get; init; }

    /// <summary>Input voltage above which it starts; <see langword="null"/>: it runs whenever its input is energised.</summary>
    public Voltage? CutIn { get; init; }

    /// <summary>Input voltage below which it stops; not above <see cref="CutIn"/>.</summary>
    public Voltage? CutOut { get; init; }

    public bool IsOn { get; init; } = true;
}
