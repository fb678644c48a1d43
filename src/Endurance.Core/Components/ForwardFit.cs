using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>Diode parameters that reproduce forward points.</summary>
/// <param name="SaturationCurrent">Above zero.</param>
/// <param name="Ideality">The one asked for, unless the series resistance had to be held.</param>
/// <param name="SeriesResistance">At least <see cref="ForwardPoints.LeastSeriesResistance"/>.</param>
/// <param name="WorstMiss">Largest difference between the fitted curve and a point, zero or more.</param>
public sealed record ForwardFit(Current SaturationCurrent, double Ideality, Resistance SeriesResistance, Voltage WorstMiss);
