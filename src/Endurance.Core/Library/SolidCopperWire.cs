using Endurance.Components;
using Endurance.Quantities;

namespace Endurance.Library;

/// <summary>Solid copper by the gauge's definition; stranded aircraft wire is another thing, see <see cref="WireTable"/>.</summary>
public static class SolidCopperWire
{
    /// <summary>Where the resistivity comes from; the diameter follows from the definition of the gauge.</summary>
    public const string Source = "0.005 in x 92^((36 - n)/39); 1.724e-8 ohm m at 20 degC (piping-designer.com)";

    private const double ResistivityAt20 = 1.724e-8;

    /// <summary>Of the bare conductor.</summary>
    /// <remarks>0.005 in x 92^((36 - n)/39), with n = 0 for 1/0 and -3 for 4/0.</remarks>
    public static Length Diameter(WireGauge gauge) => Length.FromMetres(0.005 * 0.0254 * Math.Pow(92, (36 - gauge.Number) / 39.0));

    /// <summary>At 20 degC.</summary>
    public static double OhmsPerMetreAt20(WireGauge gauge)
    {
        var radius = Diameter(gauge).Metres / 2;
        return ResistivityAt20 / (Math.PI * radius * radius);
    }
}
