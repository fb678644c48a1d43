using System.Collections.Immutable;

namespace Endurance.Yaml.Units;

/// <summary>A unit of the closed list.</summary>
/// <param name="Symbol">As files write it; case-sensitive.</param>
/// <param name="Factor">SI value of one.</param>
/// <param name="Offset">Added after the factor, for temperatures.</param>
internal sealed record Unit(string Symbol, double Factor, double Offset = 0)
{
    public double ToSi(double value) => (value * Factor) + Offset;
}

/// <summary>A kind of quantity and the units it may be written in; the SI unit is that of Endurance.Quantities.</summary>
/// <param name="Name">With its article, for messages.</param>
/// <param name="Units">Empty for a bare number.</param>
internal sealed record Dimension(string Name, ImmutableArray<Unit> Units)
{
    public static readonly Dimension Number = new("a bare number", []);
    public static readonly Dimension Current = new("a current", [new("uA", 1e-6), new("mA", 1e-3), new("A", 1)]);
    public static readonly Dimension Voltage = new("a voltage", [new("mV", 1e-3), new("V", 1)]);
    public static readonly Dimension Resistance = new("a resistance", [new("uohm", 1e-6), new("mohm", 1e-3), new("ohm", 1)]);
    public static readonly Dimension Conductance = new("a conductance", [new("mS", 1e-3), new("S", 1)]);
    public static readonly Dimension Power = new("a power", [new("mW", 1e-3), new("W", 1), new("kW", 1e3)]);
    public static readonly Dimension Charge = new("a charge", [new("mAh", 3.6), new("Ah", 3600)]);
    public static readonly Dimension Energy = new("an energy", [new("Wh", 3600)]);
    public static readonly Dimension Time = new("a time", [new("s", 1), new("min", 60), new("h", 3600)]);
    public static readonly Dimension Temperature = new("a temperature", [new("degC", 1, 273.15), new("degF", 5.0 / 9.0, 273.15 - (32 * 5.0 / 9.0))]);
    public static readonly Dimension TemperatureDifference = new("a temperature difference", [new("K", 1), new("degC", 1), new("degF", 5.0 / 9.0)]);
    public static readonly Dimension Fraction = new("a percentage", [new("%", 0.01)]);
    public static readonly Dimension Length = new("a length", [new("mm", 1e-3), new("cm", 1e-2), new("m", 1), new("in", 0.0254), new("ft", 0.3048)]);
    public static readonly Dimension Gauge = new("a wire gauge", [new("AWG", 1)]);
    public static readonly Dimension Mass = new("a mass", [new("g", 1e-3), new("kg", 1), new("lb", 0.45359237)]);
    public static readonly Dimension ThermalResistance = new("a thermal resistance", [new("K/W", 1)]);
    public static readonly Dimension PerHour = new("a rate per hour", [new("/h", 1)]);
    public static readonly Dimension EnergyGap = new("an energy gap", [new("eV", 1)]);
    public static readonly Dimension Capacitance = new("a capacitance", [new("mF", 1e-3), new("F", 1)]);

    /// <summary>Every dimension that has units.</summary>
    public static ImmutableArray<Dimension> All { get; } =
        [Current, Voltage, Resistance, Conductance, Power, Charge, Energy, Time, Temperature, TemperatureDifference, Fraction, Length, Mass, Gauge, ThermalResistance, PerHour, EnergyGap, Capacitance];

    public Unit? Find(string symbol) => Units.FirstOrDefault(unit => string.Equals(unit.Symbol, symbol, StringComparison.Ordinal));

    /// <summary>The units as a sentence lists them.</summary>
    public string ListedUnits => Units switch
    {
        [] => "no unit",
        [var only] => only.Symbol,
        [.. var first, var last] => $"{string.Join(", ", first.Select(unit => unit.Symbol))} or {last.Symbol}",
    };
}
