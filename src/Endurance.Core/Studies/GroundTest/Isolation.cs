using Endurance.Components;

namespace Endurance.Studies.GroundTest;

/// <summary>How a feed is kept from conducting on the ground.</summary>
/// <param name="Feed">With its contact open.</param>
/// <param name="How">The word before its name.</param>
/// <param name="IsDisconnected">It has no contact, so a wire comes off.</param>
internal sealed record Isolation(Feed Feed, string How, bool IsDisconnected)
{
    /// <summary>By the handiest contact it has.</summary>
    public static Isolation Of(Feed feed) => feed switch
    {
        { Switch: { } contact } => new(feed with { Switch = contact with { IsClosed = false } }, "Open", IsDisconnected: false),
        { Contactor: { } contactor } => new(feed with { Contactor = contactor with { IsClosed = false } }, "Open", IsDisconnected: false),
        { Breaker: { } breaker } => new(feed with { Breaker = breaker with { IsClosed = false } }, "Breaker pulled", IsDisconnected: false),
        { Fuse: { } fuse } => new(feed with { Fuse = fuse with { IsClosed = false } }, "Fuse out", IsDisconnected: false),
        _ => new(feed, "One end of the wire off and insulated", IsDisconnected: true),
    };

    /// <summary>With every contact closed.</summary>
    public static Feed Closed(Feed feed) => feed with
    {
        Switch = feed.Switch is { } contact ? contact with { IsClosed = true } : null,
        Contactor = feed.Contactor is { } contactor ? contactor with { IsClosed = true } : null,
        Breaker = feed.Breaker is { } breaker ? breaker with { IsClosed = true } : null,
        Fuse = feed.Fuse is { } fuse ? fuse with { IsClosed = true } : null,
    };
}
