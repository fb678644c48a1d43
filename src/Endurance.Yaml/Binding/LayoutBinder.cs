using Endurance.Yaml.Diagnostics;
using Endurance.Yaml.Documents;

namespace Endurance.Yaml.Binding;

/// <summary>Checks that <c>layouts</c> are overlays by name; what is in them is read when one is laid over the scenario.</summary>
internal static class LayoutBinder
{
    public static void Check(MappingReader top)
    {
        foreach (var entry in NamedParts.EntriesOf(top, LayoutOverlay.Key))
        {
            if (NamedParts.HasGoodName(top.Reading, entry.Key) && entry.Value is not MappingNode)
            {
                top.Reading.WrongShape(
                    entry.Value, entry.Key.Span, $"the layout {Quoted.Of(entry.Key.Value)}",
                    "the sections that differ, such as {feeds: {essential_normal: {diode: bridge_leg}}}");
            }
        }
    }
}
