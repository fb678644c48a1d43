using System.Collections.Immutable;
using Endurance.Cli.Output;
using Endurance.Reports;
using Endurance.Reports.Plots;
using Endurance.Studies.BatteryFit;

namespace Endurance.Cli.Commands;

/// <summary>What <c>endurance fit --out</c> puts into its folder.</summary>
internal static class FitFiles
{
    public static ImmutableArray<OutputFile> Of(string log, BatteryFitResult result) =>
    [
        OutputFile.OfText("battery.yaml", () => BatteryFragment.Write(log, result)),
        OutputFile.OfText("fit.json", () => BatteryFitJson.Write(log, result)),
        .. OutputFile.OfPlot("fit", DischargeFitPlot.Describe(log, result)),
    ];
}
