namespace Endurance.Scenarios;

/// <summary>Finds the known name that someone probably meant.</summary>
public static class NearestName
{
    private const int LongestCompared = 60;

    /// <summary>The candidate within about a third of the length in single-letter edits (swaps count one, capitals nothing); ties go to the first.</summary>
    /// <returns><see langword="null"/> when none is near.</returns>
    public static string? Find(string typed, IEnumerable<string> candidates)
    {
        if (typed.Length is 0 or > LongestCompared)
            return null;
        string? nearest = null;
        var least = Math.Max(1, typed.Length / 3) + 1;
        foreach (var candidate in candidates)
        {
            if (candidate.Length > LongestCompared || string.Equals(candidate, typed, StringComparison.Ordinal))
                continue;
            var distance = Distance(typed.ToLowerInvariant(), candidate.ToLowerInvariant());
            if (distance < least && distance < candidate.Length)
                (nearest, least) = (candidate, distance);
        }

        return nearest;
    }

    /// <summary>Optimal string alignment distance: insertions, deletions, substitutions and swaps of neighbours.</summary>
    internal static int Distance(string a, string b)
    {
        var cost = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
            cost[i, 0] = i;
        for (var j = 0; j <= b.Length; j++)
            cost[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var change = cost[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                cost[i, j] = Math.Min(change, Math.Min(cost[i - 1, j], cost[i, j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    cost[i, j] = Math.Min(cost[i, j], cost[i - 2, j - 2] + 1);
            }
        }

        return cost[a.Length, b.Length];
    }
}
