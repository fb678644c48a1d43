namespace Endurance.Scenarios;

/// <summary>One verb on one target.</summary>
/// <param name="Verb">What is done.</param>
/// <param name="Target">Name of a part or engine; for open and close a feed, or <c>feed.contactor</c>, <c>feed.switch</c>, <c>feed.breaker</c> where the feed has several.</param>
/// <param name="Position">For select, the position; otherwise <see langword="null"/>.</param>
public sealed record TimelineAction(ActionVerb Verb, string Target, string? Position = null);
