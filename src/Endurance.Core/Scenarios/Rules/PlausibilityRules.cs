using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using static System.FormattableString;

namespace Endurance.Scenarios.Rules;

/// <summary>Numbers that are possible one by one but hardly together.</summary>
internal static class PlausibilityRules
{
    private const double HighestUsualExponent = 1.6;

    /// <summary>Effective over rated capacity of a good battery on a hot day: common practice, no source.</summary>
    private const double HighestUsualShare = 1.2;

    /// <summary>DC resistance times rated capacity of a 12 V battery, ohm Ah, below which the number is hardly a DC resistance.</summary>
    /// <remarks>
    /// Common practice, no source: sound 12 V batteries of any chemistry stand at 0.05 to 0.3 ohm Ah at DC, and a 1 kHz reading is about half of that.
    /// </remarks>
    private const double LowestUsualOhmAmpereHours = 0.04;

    /// <summary>The same, ohm Ah, above which the unit is probably wrong: over thirty times the most that is usual, so that a worn battery may be typed.</summary>
    private const double HighestUsualOhmAmpereHours = 10;

    public static IEnumerable<RuleFinding> Check(Scenario scenario)
    {
        var voltages = new BusVoltages(scenario);
        return
        [
            .. scenario.Batteries.SelectMany(battery => BatteryFindings(voltages, battery)),
            .. scenario.Alternators.Where(alternator => !Fits(voltages, alternator.Bus, alternator.Setpoint, 12.5, 16))
                .Select(alternator => Mismatch(voltages, alternator.Bus, $"alternators.{alternator.Name}.setpoint", alternator.Setpoint, "the set-point of", alternator.Name, 12.5, 16)),
            .. scenario.Buses.Where(bus => bus.Cutoff is { } cutoff && IsOutOfReach(voltages, bus.Name, cutoff))
                .Select(bus => OutOfReach(voltages, bus.Name, $"buses.{bus.Name}.cutoff", bus.Cutoff!.Value, "the cutoff of", bus.Name)),
            .. scenario.Loads.SelectMany(load => LoadFindings(voltages, load)),
            .. scenario.FailureCases.IsEmpty
                ? [RuleFinding.Warning("no-failure-cases", "failure_cases", "", "the scenario has no failure case, so there is nothing to answer", "a case, such as `discharge: {timeline: []}`")]
                : ImmutableArray<RuleFinding>.Empty,
        ];
    }

    private static IEnumerable<RuleFinding> BatteryFindings(BusVoltages voltages, Battery battery)
    {
        if (battery.PeukertExponent > HighestUsualExponent)
        {
            yield return RuleFinding.Warning(
                "exponent-high", $"batteries.{battery.Name}.peukert", Invariant($"{battery.PeukertExponent:0.###}"),
                Invariant($"a Peukert exponent of {battery.PeukertExponent:0.###} is unusually high"), "1.0 to 1.6; lead-acid mostly 1.1 to 1.3");
        }

        var share = battery.Health * battery.CapacityFactor;
        if (share > HighestUsualShare)
        {
            yield return RuleFinding.Warning(
                "capacity-above-rating", $"batteries.{battery.Name}.{(battery.CapacityFactor > 1 ? "capacity_factor" : "health")}", Invariant($"{share * 100:0.#} %"),
                Invariant($"`{battery.Name}` counts with {share * 100:0.#} % of its rated capacity, more than a new, warm battery has"),
                Invariant($"`health` times `capacity_factor` of at most {HighestUsualShare * 100:0} %"));
        }

        var full = Voltage.FromVolts(battery.Emf.Y[^1]);
        if (!Fits(voltages, battery.Bus, full, 10, 16))
        {
            var finding = Mismatch(voltages, battery.Bus, $"batteries.{battery.Name}.emf", full, "the EMF when full of", battery.Name, 10, 16);
            yield return battery.Chemistry is null ? finding : finding with { Expected = finding.Expected + "; the chemistry's values go by the number of `cells`" };
        }

        if (ResistanceFinding(battery, voltages.Fourteens(battery.Bus)) is { } unusual)
            yield return unusual;
    }

    private static RuleFinding? ResistanceFinding(Battery battery, double batteriesInSeries)
    {
        var lowest = battery.Resistance.Y.Min();
        var capacity = battery.RatedCapacity.AmpereHours;
        var path = $"batteries.{battery.Name}.resistance";
        double Usual(double ohmAmpereHours) => ohmAmpereHours * batteriesInSeries / capacity * 1000;
        return (lowest * capacity / batteriesInSeries) switch
        {
            > HighestUsualOhmAmpereHours => RuleFinding.Warning(
                "resistance-high", path, Invariant($"{lowest:0.###} ohm"), Invariant($"{lowest:0.###} ohm is very high for {capacity:G4} Ah: one of the two probably has a wrong unit"),
                Invariant($"the DC resistance, hardly above {Usual(HighestUsualOhmAmpereHours):0.##} mohm (common practice, no source)")),
            < LowestUsualOhmAmpereHours => RuleFinding.Warning(
                "resistance-low", path, Invariant($"{lowest * 1000:G4} mohm"),
                Invariant($"{lowest * 1000:G4} mohm is very low for {capacity:G4} Ah: it looks like a 1 kHz reading, which is about half the DC resistance, or a wrong unit of one of the two"),
                Invariant($"the DC resistance, hardly below {Usual(LowestUsualOhmAmpereHours):0.##} mohm (common practice, no source)")),
            _ => null,
        };
    }

    private static IEnumerable<RuleFinding> LoadFindings(BusVoltages voltages, Load load)
    {
        if (load.Minimum is { } minimum && load.Restart is { } restart && restart < minimum)
        {
            yield return RuleFinding.Error(
                "restart-below-minimum", $"loads.{load.Name}.restart", Invariant($"{restart.Volts:0.###} V"),
                Invariant($"`{load.Name}` would restart at {restart.Volts:0.###} V, below its minimum of {minimum.Volts:0.###} V"),
                Invariant($"a voltage of {minimum.Volts:0.###} V or more"));
        }

        if (load.Minimum is null && load.Restart is not null)
        {
            yield return RuleFinding.Warning(
                "restart-without-minimum", $"loads.{load.Name}.restart", "",
                $"`{load.Name}` has a restart but no minimum: it never stops, so the restart is not used", "a `minimum` below the restart");
        }

        if (load.Minimum is { } high && IsOutOfReach(voltages, load.Bus, high))
            yield return OutOfReach(voltages, load.Bus, $"loads.{load.Name}.minimum", high, "the minimum of", load.Name);
    }

    private static bool Fits(BusVoltages voltages, string bus, Voltage value, double least, double most) =>
        value.Volts >= least * voltages.Fourteens(bus) && value.Volts <= most * voltages.Fourteens(bus);

    private static bool IsOutOfReach(BusVoltages voltages, string bus, Voltage value) => value.Volts > 15 * voltages.Fourteens(bus);

    private static RuleFinding Mismatch(
        BusVoltages voltages, string bus, string path, Voltage value, string what, string name, double least, double most) => RuleFinding.Warning(
        "voltage-mismatch", path, Invariant($"{value.Volts:0.###} V"),
        Invariant($"{what} `{name}`, {value.Volts:0.###} V, does not fit {Level(voltages, bus)}"),
        Invariant($"{least * voltages.Fourteens(bus):0.#} V to {most * voltages.Fourteens(bus):0.#} V"));

    private static RuleFinding OutOfReach(BusVoltages voltages, string bus, string path, Voltage value, string what, string name) => RuleFinding.Warning(
        "voltage-mismatch", path, Invariant($"{value.Volts:0.###} V"),
        Invariant($"{what} `{name}`, {value.Volts:0.###} V, is hardly ever reached in {Level(voltages, bus)}"),
        Invariant($"at most {15 * voltages.Fourteens(bus):0.#} V"));

    private static string Level(BusVoltages voltages, string bus) =>
        voltages.IsBehindConverter(bus) ? $"the {voltages.Of(bus)} behind the converter of `{bus}`" : $"a {voltages.Of(bus)} system";
}
