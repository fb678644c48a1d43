namespace Endurance.Studies.BatteryFit;

/// <summary>A number out of a fit.</summary>
/// <param name="Value">In the unit the property names.</param>
/// <param name="StandardError">Same unit; <see langword="null"/>: there are no more measurements than parameters, so none can be told.</param>
public sealed record FittedValue(double Value, double? StandardError)
{
    /// <summary>Both multiplied.</summary>
    public FittedValue Times(double factor) => new(Value * factor, StandardError * Math.Abs(factor));
}
