using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>Binds <c>low_voltage_warnings</c>.</summary>
internal static class WarningBinder
{
    public static ImmutableArray<LowVoltageWarning> Bind(MappingReader top) =>
        [.. NamedParts.Of(top, "low_voltage_warnings", SupplyKeys.Warning).Select(part => Warning(part.Name, part.Reader))];

    private static LowVoltageWarning Warning(string name, MappingReader reader)
    {
        if (!reader.Has("for"))
            reader.Reading.Assume(name, "comes on at once when its bus is low");
        return new LowVoltageWarning
        {
            Name = name,
            Senses = reader.RequiredText("senses"),
            Below = Voltage.FromVolts(reader.RequiredQuantity("below")),
            For = Duration.FromSeconds(reader.Quantity("for") ?? 0),
        };
    }
}
