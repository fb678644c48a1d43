using System.Text;

namespace Endurance.Reports.Plots;

/// <summary>File names without an ending that every file system takes.</summary>
public static class FileStem
{
    private const int Longest = 60;

    /// <summary>Lower-case Latin letters, digits, underscore and hyphen; everything else becomes a hyphen.</summary>
    public static string Of(string text)
    {
        var stem = new StringBuilder();
        foreach (var c in text.ToLowerInvariant())
        {
            var safe = c is (>= 'a' and <= 'z') or (>= '0' and <= '9') or '_' or '-' ? c : '-';
            if (safe is not '-' || (stem.Length > 0 && stem[^1] is not '-'))
                stem.Append(safe);
        }

        var trimmed = stem.ToString(0, Math.Min(stem.Length, Longest)).Trim('-');
        return trimmed.Length > 0 ? trimmed : "unnamed";
    }

    /// <summary>The stem, numbered when it is taken already; the caller's set grows.</summary>
    public static string Unique(string stem, HashSet<string> taken)
    {
        var candidate = stem;
        for (var i = 2; !taken.Add(candidate); i++)
            candidate = $"{stem}-{RoundedNumber.Short(i, 0)}";
        return candidate;
    }
}
