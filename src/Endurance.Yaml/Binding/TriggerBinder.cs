using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Yaml.Keys;

namespace Endurance.Yaml.Binding;

/// <summary>Binds what sets a step off: <c>at</c> or <c>when</c>.</summary>
internal static class TriggerBinder
{
    public static Trigger Bind(MappingReader step)
    {
        if (step.Has("at") && step.Has("when"))
            step.Error("conflicting-keys", "when", $"{step.Owner} has both `at` and `when`", "one of the two a step");
        if (!step.Has("at") && !step.Has("when"))
            step.Reading.Diagnostics.Error("missing-key", step.Place, $"{step.Owner} has neither `at` nor `when`", "at: 5 min, or when: {bus: main_bus, below: 12.5 V, for: 60 s}");
        if (!step.Has("when"))
            return new AtTime(Duration.FromSeconds(step.Quantity("at") ?? 0));
        if (step.Mapping("when", ScenarioKeys.When) is not { } when)
            return new AtTime(Duration.Zero);
        return when.Has("warning") ? Warned(when) : Low(when);
    }

    private static WhenBelow Low(MappingReader when)
    {
        foreach (var key in (ReadOnlySpan<string>)["bus", "below"])
        {
            if (!when.Has(key))
                when.ReportMissing(key, when.Known(key).Form);
        }

        if (when.Has("recognised_after"))
            when.Error("conflicting-keys", "recognised_after", $"{when.Owner} has a `recognised_after` but no `warning`", "warning: " + when.Known("warning").Form);
        return new WhenBelow(when.RequiredText("bus"), Voltage.FromVolts(when.RequiredQuantity("below")), Duration.FromSeconds(when.Quantity("for") ?? 0));
    }

    private static WhenWarned Warned(MappingReader when)
    {
        foreach (var key in (ReadOnlySpan<string>)["bus", "below", "for"])
        {
            if (when.Has(key))
                when.Error("conflicting-keys", key, $"{when.Owner} has both `warning` and `{key}`", "warning and recognised_after, or bus, below and for");
        }

        if (!when.Has("recognised_after"))
            when.Reading.Assume(when.RequiredText("warning"), "recognised at once when it comes on");
        return new WhenWarned(when.RequiredText("warning"), Duration.FromSeconds(when.Quantity("recognised_after") ?? 0));
    }
}
