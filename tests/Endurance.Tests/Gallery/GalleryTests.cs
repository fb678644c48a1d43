using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Endurance.Quantities;
using Endurance.Reports.Plots;
using Endurance.Simulation;
using Endurance.Studies.FailureCases;
using Endurance.Studies.LayoutComparison;
using Endurance.Tests.Yaml;
using Endurance.Yaml;

namespace Endurance.Tests.Gallery;

/// <summary>The pictures in plots/ show what the program draws from the shipped scenarios now.</summary>
/// <remarks>
/// Beside the pictures of a scenario lies what they plot, as text. To redraw all of them run the tests of this class with
/// ENDURANCE_REDRAW set to 1, look at the pictures, and commit them with the text.
/// </remarks>
public sealed partial class GalleryTests
{
    /// <summary>Processors differ in the last bits of exp and log; what is plotted is rounded to 1e-6.</summary>
    private const double Tolerance = 2e-6;

    private static readonly SimulationOptions Options = new() { SampleInterval = Duration.FromMinutes(1) };

    public static TheoryData<string> Scenarios => [.. Directory.GetFiles(Folders.Scenarios, "*.yaml").Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Scenarios))]
    public void Gallery_ShippedScenario_PlotsWhatTheProgramDraws(string name)
    {
        var plots = Plots(name);
        var now = string.Join('\n', plots.Select(plot => PlotDescriptionText.Write(plot.Plot)));
        var folder = Path.Combine(Folders.Scenarios, "..", "plots", name);
        if (string.Equals(Environment.GetEnvironmentVariable("ENDURANCE_REDRAW"), "1", StringComparison.Ordinal))
            Redraw(folder, plots, now);
        var kept = File.ReadAllText(Path.Combine(folder, "plotted.txt"));

        Assert.Equal(Words(kept), Words(now));
        Assert.All(Numbers(kept).Zip(Numbers(now)), pair => Assert.Equal(pair.First, pair.Second, Tolerance));
        Assert.All(plots, plot => Assert.True(File.Exists(Path.Combine(folder, plot.FileStem + ".png")), plot.FileStem));
    }

    /// <summary>All cases, all essential loads, the buses and batteries of the first case, and that case in every layout where there are several.</summary>
    private static (string FileStem, PlotDescription Plot)[] Plots(string name)
    {
        var file = Path.Combine(Folders.Scenarios, name + ".yaml");
        var read = ScenarioReader.ReadFile(file);
        var scenario = read.Scenario!;
        var results = FailureCaseStudy.Run(scenario, scenario.FailureCases, Options);
        var first = PlotSet.Describe(scenario, results[..1]).Where(plot => plot.FileStem.StartsWith("case-", StringComparison.Ordinal));
        return [.. PlotSet.Describe(scenario, results).Where(plot => !plot.FileStem.StartsWith("case-", StringComparison.Ordinal)), .. first, .. Layouts(file, read)];
    }

    private static IEnumerable<(string FileStem, PlotDescription Plot)> Layouts(string file, ScenarioReadResult drawn)
    {
        if (drawn.Layouts.IsEmpty)
            yield break;
        NamedLayout[] layouts = [new("as drawn", drawn.Scenario!), .. drawn.Layouts.Select(layout => new NamedLayout(layout, ScenarioReader.ReadFile(file, layout).Scenario!))];
        var first = drawn.Scenario!.FailureCases[0].Name;
        yield return ("layouts", LayoutPlot.Describe(LayoutComparisonStudy.Run([.. layouts], Options.Tolerance), first)!);
    }

    private static void Redraw(string folder, (string FileStem, PlotDescription Plot)[] plots, string text)
    {
        if (Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
        Directory.CreateDirectory(folder);
        foreach (var (stem, plot) in plots)
            File.WriteAllBytes(Path.Combine(folder, stem + ".png"), PlotRenderer.Png(plot));
        File.WriteAllText(Path.Combine(folder, "plotted.txt"), text, new UTF8Encoding(false));
    }

    private static string Words(string text) => Number().Replace(text, "#");

    private static IEnumerable<double> Numbers(string text) =>
        Number().Matches(text).Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture));

    [GeneratedRegex(@"-?\d+(\.\d+)?(E[+-]?\d+)?", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Number();
}
