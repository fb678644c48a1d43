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
    public static ImmutableArray<LoadItem> Of(Scenario scenario)
    {
        var voltages = new BusVoltages(scenario);
        return
        [
            .. scenario.Loads.Select(load => OfLoad(scenario, voltages, load)),
            .. scenario.Feeds.Where(feed => feed.Contactor?.Coil is not null).Select(feed => OfCoil(voltages, feed, feed.Contactor!)),
            .. scenario.Alternators.Where(alternator => alternator.Field is not null).Select(alternator => OfField(voltages, alternator, alternator.Field!)),
        ];
    }

    private static LoadItem OfLoad(Scenario scenario, BusVoltages voltages, Load load)
    {
        var nominal = voltages.Of(load.Bus);
        var draw = load.CurrentAt(nominal);
        var isForLanding = scenario.Landing?.Connect.Contains(load.Name, StringComparer.Ordinal) == true;
        return new LoadItem
        {
            Part = load.Name,
            Kind = LoadItemKind.Load,
            Bus = load.Bus,
            Phase = load.Phase ?? (isForLanding && !load.IsOn ? Landing : null),
            IsOn = load.IsOn,
            Nominal = nominal,
            AtSystem = voltages.AtSystem(load.Bus),
            Draw = draw,
            Duty = load.Duty,
            Peak = Larger(Larger(draw, load.Peak), load.Inrush?.Current),
            Basis = load.Basis,
            MeasuredOn = load.MeasuredOn,
        };
    }

    private static LoadItem OfCoil(BusVoltages voltages, Feed feed, Contactor contactor)
    {
        var bus = contactor.CoilBus ?? feed.From;
        var nominal = voltages.Of(bus);
        var draw = contactor.Coil!.CurrentAt(nominal);
        return new LoadItem
        {
            Part = feed.Name,
            Kind = LoadItemKind.Coil,
            Bus = bus,
            IsOn = contactor.IsClosed != contactor.IsNormallyClosed,
            Nominal = nominal,
            AtSystem = voltages.AtSystem(bus),
            Draw = draw,
            Peak = Larger(draw, contactor.PullInCurrent),
        };
    }

    private static LoadItem OfField(BusVoltages voltages, Alternator alternator, AlternatorField field) => new()
    {
        Part = alternator.Name,
        Kind = LoadItemKind.Field,
        Bus = field.Bus,
        IsOn = alternator.IsOn && field.IsOn,
        Nominal = voltages.Of(field.Bus),
        AtSystem = voltages.AtSystem(field.Bus),
        Draw = field.Current,
        Peak = field.Current,
    };

    private static Current Larger(Current a, Current? b) => b is { } other && other > a ? other : a;
}
