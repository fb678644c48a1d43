using System.Reflection;
using Endurance.Yaml.Keys;

namespace Endurance.Tests.Yaml;

public class KnownKeyTests
{
    /// <summary>Every section that the reader knows, found where they are declared, so that none can be forgotten here.</summary>
    internal static IReadOnlyList<Section> Sections { get; } =
    [
        .. typeof(Section).Assembly.GetTypes()
            .SelectMany(type => type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic))
            .Where(field => field.FieldType == typeof(Section))
            .Select(field => (Section)field.GetValue(null)!),
    ];

    [Fact]
    public void Sections_OfTheReader_AreFound() => Assert.True(Sections.Count >= 34);

    [Fact]
    public void Example_OfEveryQuantity_IsInItsRange() =>
        Assert.All(Sections.SelectMany(section => section.Keys).Where(key => key.Range is not null), key => Assert.True(key.Range!.Contains(key.Range.Placeholder), key.Name));

    [Fact]
    public void Keys_OfEverySection_AreNamedOnce() =>
        Assert.All(Sections, section => Assert.Equal(section.Keys.Length, section.Keys.Select(key => key.Name).Distinct(StringComparer.Ordinal).Count()));
}
