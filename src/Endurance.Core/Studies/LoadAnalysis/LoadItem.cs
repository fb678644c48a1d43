using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Studies.LoadAnalysis;

/// <summary>One line of the load table: a load, the coil of a contactor or the field of an alternator.</summary>
public sealed record LoadItem
{
    /// <summary>Name of the load, feed or alternator.</summary>
    public required string Part { get; init; }

    public required LoadItemKind Kind { get; init; }

    /// <summary>As a reader finds it: the part, with <c>coil</c> or <c>field</c> behind it where it is one.</summary>
    public string Name => Kind switch
    {
        LoadItemKind.Coil => Part + " coil",
        LoadItemKind.Field => Part + " field",
        _ => Part,
    };

    public required string Bus { get; init; }

    /// <summary><see langword="null"/>: every phase.</summary>
    public string? Phase { get; init; }

    /// <summary>As drawn.</summary>
    public required bool IsOn { get; init; }

    /// <summary>Of its bus: the system's, or that of the converter that feeds it.</summary>
    public required Voltage Nominal { get; init; }

    /// <summary>Amperes at the system's voltage for one at its own; above 0. Not 1 behind a converter alone, whose losses are in it.</summary>
    public double AtSystem { get; init; } = 1;

    /// <summary>While it draws, at the nominal voltage of its bus.</summary>
    public required Current Draw { get; init; }

    /// <summary>Above 0, at most 1.</summary>
    public double Duty { get; init; } = 1;

    /// <summary>Largest short draw, stated peak and inrush included; not below <see cref="Draw"/>.</summary>
    public required Current Peak { get; init; }

    /// <summary><see langword="null"/>: not said.</summary>
    public LoadBasis? Basis { get; init; }

    public DateOnly? MeasuredOn { get; init; }

    /// <summary>It comes and goes.</summary>
    public bool IsIntermittent => Duty < 1;

    public Current Mean => Draw * Duty;
}
