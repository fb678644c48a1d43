using System.Collections.Immutable;
using Endurance.Quantities;
using Endurance.Simulation;

namespace Endurance.Reports;

/// <summary>An event as it is told to people; one that goes on and on is told a few times and then counted.</summary>
/// <param name="Event">What happened.</param>
/// <param name="More">How often the same happens again without being told; above zero at the last telling alone.</param>
/// <param name="Last">When it happens for the last time.</param>
internal readonly record struct ToldEvent(TimedEvent Event, int More, Duration Last)
{
    /// <summary>A repetition up to this often is told in full.</summary>
    private const int MostTold = 4;

    /// <summary>Of what repeats more often.</summary>
    private const int ToldOfMany = 3;

    /// <summary>In the order of the run.</summary>
    public static ImmutableArray<ToldEvent> Of(ImmutableArray<TimedEvent> events)
    {
        var same = events.GroupBy(happened => happened.What, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.ToList(), StringComparer.Ordinal);
        var told = new Dictionary<string, int>(StringComparer.Ordinal);
        var result = ImmutableArray.CreateBuilder<ToldEvent>();
        foreach (var happened in events)
        {
            var all = same[happened.What];
            var times = told[happened.What] = told.GetValueOrDefault(happened.What) + 1;
            if (all.Count <= MostTold || times <= ToldOfMany)
                result.Add(new ToldEvent(happened, all.Count > MostTold && times == ToldOfMany ? all.Count - ToldOfMany : 0, all[^1].Time));
        }

        return result.ToImmutable();
    }
}
