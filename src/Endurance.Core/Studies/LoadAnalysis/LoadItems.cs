using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;

namespace Endurance.Studies.LoadAnalysis;

/// <summary>Everything that draws from a bus.</summary>
internal static class LoadItems
{
    /// <summary>Phase of the loads that a scenario's landing switches on and that name none.</summary>
    public const string Landing = "landing";

    /// <summary>Loads in the order of the scenario, then coils, then fields.</summary>
    public static ImmutableArray<LoadItem> Of(Scenario scenario) =>
    [
        .. scenario.Loads.Select(load => OfLoad(scenario, load)),
        .. scenario.Feeds.Where(feed => feed.Contactor?.Coil is not null).Select(feed => OfCoil(scenario, feed, feed.Contactor!)),
        .. scenario.Alternators.Where(alternator => alternator.Field is not null).Select(alternator => OfField(alternator, alternator.Field!)),
    ];

    private static LoadItem OfLoad(Scenario scenario, Load load)
    {
        var draw = load.CurrentAt(scenario.NominalVoltage);
        var isForLanding = scenario.Landing?.Connect.Contains(load.Name, StringComparer.Ordinal) == true;
        return new LoadItem
        {
            Part = load.Name,
            Kind = LoadItemKind.Load,
            Bus = load.Bus,
            Phase = load.Phase ?? (isForLanding && !load.IsOn ? Landing : null),
            IsOn = load.IsOn,
            Draw = draw,
            Duty = load.Duty,
            Peak = Larger(Larger(draw, load.Peak), load.Inrush?.Current),
            Basis = load.Basis,
            MeasuredOn = load.MeasuredOn,
        };
    }

    private static LoadItem OfCoil(Scenario scenario, Feed feed, Contactor contactor)
    {
        var draw = contactor.Coil!.CurrentAt(scenario.NominalVoltage);
        return new LoadItem
        {
            Part = feed.Name,
            Kind = LoadItemKind.Coil,
            Bus = contactor.CoilBus ?? feed.From,
            IsOn = contactor.IsClosed != contactor.IsNormallyClosed,
            Draw = draw,
            Peak = Larger(draw, contactor.PullInCurrent),
        };
    }

    private static LoadItem OfField(Alternator alternator, AlternatorField field) => new()
    {
        Part = alternator.Name,
        Kind = LoadItemKind.Field,
        Bus = field.Bus,
        IsOn = alternator.IsOn && field.IsOn,
        Draw = field.Current,
        Peak = field.Current,
    };

    private static Current Larger(Current a, Current? b) => b is { } other && other > a ? other : a;
}
