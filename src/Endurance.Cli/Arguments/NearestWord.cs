using Endurance.Scenarios;

namespace Endurance.Cli.Arguments;

/// <summary>What a mistyped word was probably meant to be.</summary>
internal static class NearestWord
{
    /// <summary>A sentence that begins with a space, or nothing when no word is near.</summary>
    public static string Hint(string typed, IEnumerable<string> known) =>
        NearestName.Find(typed, known) is { } word ? $" Did you mean '{word}'?" : "";
}
