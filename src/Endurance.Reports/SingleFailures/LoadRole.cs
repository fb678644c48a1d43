using System.Collections.Immutable;
using Endurance.Scenarios;

namespace Endurance.Reports;

/// <summary>Essential loads that do one job, so that losing all of them is worse than the sum. Their names tell.</summary>
/// <param name="Word">What the names contain.</param>
/// <param name="Question">What a failure does that takes all of them.</param>
/// <param name="Loads">At least one, in the order of the scenario.</param>
internal sealed record LoadRole(string Word, string Question, ImmutableArray<string> Loads)
{
    private const string Ignition = "ignition";
    private const string Display = "display";

    /// <summary>Ignitions and displays, where there are any.</summary>
    public static ImmutableArray<LoadRole> Of(Scenario scenario)
    {
        var (ignitions, displays) = (Named(scenario, Ignition), Named(scenario, Display));
        return
        [
            .. ignitions.IsEmpty ? Array.Empty<LoadRole>() : [new LoadRole(Ignition, $"takes {Every(ignitions.Length)}: {string.Join(", ", ignitions)}", ignitions)],
            .. displays.IsEmpty ? Array.Empty<LoadRole>() : [new LoadRole(Display, $"takes the {(displays.Length == 1 ? "only" : "last")} display: {string.Join(", ", displays)}", displays)],
        ];
    }

    private static string Every(int ignitions) => ignitions switch
    {
        1 => "the only ignition",
        2 => "both ignitions",
        _ => $"all {RoundedNumber.Short(ignitions, 0)} ignitions",
    };

    private static ImmutableArray<string> Named(Scenario scenario, string word) =>
        [.. scenario.EssentialLoads.Where(load => load.Contains(word, StringComparison.OrdinalIgnoreCase))];
}
