using System.Text;
using Endurance.Reports.Plots;

namespace Endurance.Cli.Output;

/// <summary>A file to write.</summary>
/// <param name="Name">Without any folder.</param>
/// <param name="Write">Writes the whole content; called once.</param>
internal sealed record OutputFile(string Name, Action<Stream> Write)
{
    public static OutputFile OfText(string name, Func<string> content) =>
        new(name, stream => stream.Write(Encoding.UTF8.GetBytes(content())));

    /// <summary>PNG and SVG of one picture.</summary>
    public static IEnumerable<OutputFile> OfPlot(string fileStem, PlotDescription plot) =>
    [
        new($"{fileStem}.png", stream => stream.Write(PlotRenderer.Png(plot))),
        new($"{fileStem}.svg", stream => stream.Write(PlotRenderer.Svg(plot))),
    ];
}
