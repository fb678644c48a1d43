using Endurance.Components;
using Endurance.Findings;
using Endurance.Library;
using Endurance.Quantities;
using Endurance.Yaml.Documents;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>Binds a breaker, fuse or fusible link: a bare rating, or its own keys.</summary>
internal static class ProtectionBinder
{
    /// <summary><see langword="null"/> when absent or faulty.</summary>
    /// <param name="part">Feed or load it belongs to.</param>
    /// <param name="owner">Reader of that part.</param>
    /// <param name="key">The key it stands under.</param>
    /// <param name="kind">What opens.</param>
    /// <param name="section">Its own keys.</param>
    public static Protection? Bind(string part, MappingReader owner, string key, ProtectionKind kind, Section section)
    {
        if (owner.Find(key) is not { } node)
            return null;
        var keys = node is MappingNode ? owner.Mapping(key, section) : null;
        var rating = keys?.RequiredQuantity("rated") ?? owner.Reading.Quantity(node, owner.PlaceOf(key), key, FeedKeys.BreakerRating);
        if (rating is null)
            return null;
        var defaults = ProtectionDefaults.For(kind);
        var word = key.Replace('_', ' ');
        if (keys?.Has("resistance") is not true)
            owner.Reading.Assume(part, $"{word} resistance 0");
        if (keys?.Has("factor") is not true)
            owner.Reading.Assume(part, FormattableString.Invariant($"{word} carries {defaults.Factor:0.##} times its rating for ever"), Origin.Library, ProtectionDefaults.Source);
        if (keys?.Has("time_constant") is not true)
            owner.Reading.Assume(part, FormattableString.Invariant($"{word} heats with a time constant of {defaults.TimeConstant.Seconds:0.##} s"), Origin.Library, ProtectionDefaults.Source);
        return new Protection
        {
            Kind = kind,
            Rating = Current.FromAmperes(rating.Value),
            Resistance = keys?.Resistance("resistance") ?? default,
            Factor = keys?.Quantity("factor") ?? defaults.Factor,
            TimeConstant = keys?.Quantity("time_constant") is { } seconds ? Duration.FromSeconds(seconds) : defaults.TimeConstant,
            IsClosed = keys is null || section.Find("state") is null || (keys.Either("state", "closed", "open") ?? true),
        };
    }
}
