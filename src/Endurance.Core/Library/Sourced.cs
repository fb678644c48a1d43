namespace Endurance.Library;

/// <summary>A value of the built-in reference data and where it comes from.</summary>
/// <param name="Value">In the unit that the property names.</param>
/// <param name="Source">Publication, or <see cref="FromMemory"/>, or <see cref="CommonPractice"/>.</param>
public sealed record Sourced<T>(T Value, string Source)
{
    public const string FromMemory = "from memory, unverified";

    public const string CommonPractice = "common practice, no source";
}
