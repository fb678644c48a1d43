using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Findings;
using Endurance.Library;
using Endurance.Scenarios;

namespace Endurance.Studies.Wiring;

/// <summary>What the judgement of wires rests on besides the scenario.</summary>
internal static class WiringAssumptions
{
    public static ImmutableArray<Assumption> Of(Scenario scenario, WiringOptions options)
    {
        var voltages = new BusVoltages(scenario);
        var limits = scenario.Buses.Select(bus => voltages.Of(bus.Name)).Prepend(scenario.NominalVoltage).Distinct().Select(AllowableDrop.For).ToList();
        var insulation = options.Insulation switch { Insulation.Rated105 => "105", Insulation.Rated150 => "150", _ => "200" };
        var rating = options.Bundling == Bundling.FreeAir
            ? Library("each wire alone in free air, whatever its insulation", FreeAirRatings.Source)
            : Library($"every wire in a bundle with {insulation} degC insulation; rated for 70 degC around it, 33 or more wires (9 from No. 8 up) at 20 % of their capacity, 60,000 ft", WireTable.Source);
        var isDefault = options.Insulation == new WiringOptions().Insulation && options.Bundling == new WiringOptions().Bundling;
        return
        [
            isDefault ? rating with { Origin = Origin.Default } : rating,
            .. limits.Select(limit => Library(FormattableString.Invariant($"drop of {limit.Continuous.Volts:0.##} V allowed continuously at {limit.Nominal.Volts:0.#} V"), AllowableDrop.Source)),
            .. limits.Select(limit => Library(FormattableString.Invariant($"drop of {limit.Intermittent.Value.Volts:0.##} V allowed for a short time{(limits.Count > 1 ? FormattableString.Invariant($" at {limit.Nominal.Volts:0.#} V") : "")}"), limit.Intermittent.Source)),
            new("wiring", "a drop up to 1 % above its limit passes, as 0.504 V against 0.5 V does in the table's own example", Origin.Default, "FAA AC 43.13-1B, table 11-7, page 11-22"),
            new("wiring", "the drop is that of the wire and its return, at the conductor temperature of the scenario; contacts and diodes are left out", Origin.Derived, null),
            new("wiring", "short time is up to 2 min; steady currents take each load's mean over its duty, short ones its full draw", Origin.Default, Sourced<double>.FromMemory),
            Library("conductor temperature T1 + (TR - T1) sqrt(I/Imax), from ambient, insulation, steady current and rating", "FAA AC 43.13-1B, page 11-23; layout of the formula " + Sourced<double>.FromMemory),
            Library("protection chart for " + ProtectionChart.Basis, ProtectionChart.Source),
        ];
    }

    private static Assumption Library(string text, string source) => new("wiring", text, Origin.Library, source);
}
