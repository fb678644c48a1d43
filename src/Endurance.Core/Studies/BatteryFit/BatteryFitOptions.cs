using System.Collections.Immutable;
using Endurance.Quantities;

namespace Endurance.Studies.BatteryFit;

/// <summary>What is known besides the log, and how the fit is made.</summary>
public sealed record BatteryFitOptions
{
    /// <summary>From the label; <see langword="null"/>: health is not asked for and no test is judged.</summary>
    public RatedCapacity? Rated { get; init; }

    /// <summary>Terminal voltages to count minutes to; the lowest ends the discharge. Empty: the last voltage that every run of the fit reached.</summary>
    public ImmutableArray<Voltage> EndVoltages { get; init; } = [];

    /// <summary>Left out of the voltage fit at the start of each run, where surface charge shows; its charge still counts. Zero or more.</summary>
    public Duration Skip { get; init; } = Duration.FromMinutes(5);

    /// <summary>Least fraction of the rating that passes a capacity test; common practice, no source.</summary>
    public double PassFraction { get; init; } = 0.8;

    /// <summary>Numbers of the runs to fit on, the others being predicted; empty: every run that goes down to the end.</summary>
    public ImmutableArray<int> Runs { get; init; } = [];

    /// <summary>Known from elsewhere; <see langword="null"/>: taken from current steps where the log has some.</summary>
    public Resistance? Resistance { get; init; }

    /// <summary>Known from elsewhere, at least 1; <see langword="null"/>: taken from the log where it has several rates.</summary>
    public double? PeukertExponent { get; init; }
}
