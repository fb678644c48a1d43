using System.Collections.Immutable;
using ScottPlot;
using SkiaSharp;

namespace Endurance.Reports.Plots;

/// <summary>How a curve looks: colour, dashes and marker differ together, so that it reads in black and white too.</summary>
internal sealed record PlotStyle(Color Colour, float[] Dashes, MarkerShape Marker)
{
    /// <summary>Told apart by people who see colours differently: M. Okabe and K. Ito, "Color Universal Design", 2008; their yellow is left out, too faint on white.</summary>
    private static readonly ImmutableArray<Color> Colours =
    [
        new(0, 114, 178), new(213, 94, 0), new(0, 158, 115), new(204, 121, 167), new(0, 0, 0), new(230, 159, 0), new(86, 180, 233),
    ];

    private static readonly ImmutableArray<float[]> Patterns =
    [
        [], [10, 5], [2.5f, 3.5f], [12, 4, 2, 4], [18, 4], [12, 3, 2, 3, 2, 3],
    ];

    private static readonly ImmutableArray<MarkerShape> Markers =
    [
        MarkerShape.FilledCircle, MarkerShape.FilledSquare, MarkerShape.FilledTriangleUp, MarkerShape.FilledDiamond,
        MarkerShape.OpenCircle, MarkerShape.FilledTriangleDown, MarkerShape.OpenSquare,
    ];

    public const float LineWidth = 2.4f;
    public const float MarkerSize = 9;

    /// <summary>The style of that number; colours and dashes repeat with different periods.</summary>
    public static PlotStyle Number(int number) =>
        new(Colours[number % Colours.Length], Patterns[number % Patterns.Length], Markers[number % Markers.Length]);

    /// <summary>Dashes of a straight line across a panel.</summary>
    public static float[] DashesOf(ReferenceLineKind kind) => kind switch
    {
        ReferenceLineKind.Cutoff => [6, 4],
        ReferenceLineKind.Present => [12, 4, 2, 4],
        _ => [3, 3],
    };

    /// <summary>Width in pixels of a straight line across a panel.</summary>
    public static float WidthOf(ReferenceLineKind kind) => kind is ReferenceLineKind.Cutoff or ReferenceLineKind.Present ? 1.6f : 2.4f;

    /// <summary>A level line, as opposed to an upright one.</summary>
    public static bool IsLevel(ReferenceLineKind kind) => kind is ReferenceLineKind.Cutoff or ReferenceLineKind.LevelRequirement;

    public SKColor Ink => Colour.ToSKColor();

    public MarkerStyle MarkerOfSize(float size) => new(Marker, size, Colour) { LineWidth = 2 };
}
