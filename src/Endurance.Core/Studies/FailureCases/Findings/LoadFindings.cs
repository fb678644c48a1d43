using Endurance.Components;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Scenarios;

namespace Endurance.Studies.FailureCases.Findings;

/// <summary>Loads whose figures are probably not what the equipment does.</summary>
internal static class LoadFindings
{
    /// <summary>How near a peak must be to the draw to look like the same number.</summary>
    private const double SameNumber = 0.02;

    public static IEnumerable<Finding> Of(Scenario scenario)
    {
        var voltages = new BusVoltages(scenario);
        return scenario.Loads.SelectMany(load => new[]
        {
            WithoutMinimum(scenario, load),
            CurrentOfASupply(load, voltages.Of(load.Bus), voltages.OfBattery(load.Bus)),
            PeakAsMean(load, voltages.Of(load.Bus)),
        }).OfType<Finding>();
    }

    private static Finding? WithoutMinimum(Scenario scenario, Load load)
    {
        if (load.Minimum is not null || !load.IsEssential)
            return null;
        var cutoff = scenario.Buses.FirstOrDefault(bus => string.Equals(bus.Name, load.Bus, StringComparison.Ordinal))?.Cutoff;
        return cutoff is { } volts
            ? new Finding("no-minimum", Severity.Caution, load.Name, Figures.Volts(volts),
                $"{load.Name} is essential and has no minimum voltage: it is judged at the cutoff of {load.Bus}, {Figures.Volts(volts)}. Give `minimum` from its manual.")
            : new Finding("no-minimum", Severity.Warning, load.Name, Figures.Volts(Load.LastResortMinimum),
                $"{load.Name} is essential and has no minimum voltage: it counts as alive down to {Figures.Volts(Load.LastResortMinimum)}, long after any equipment has stopped. Give `minimum` from its manual.");
    }

    /// <summary>What boots has a processor behind a switching supply, which draws more as the voltage falls (common practice, no source).</summary>
    private static Finding? CurrentOfASupply(Load load, Voltage nominal, Voltage ofBattery)
    {
        if (load.Demand is not ConstantCurrent constant || (load.Restart is null && load.StartUp == Duration.Zero))
            return null;
        var watts = nominal * constant.Current;
        var low = load.Minimum ?? ofBattery;
        var there = Figures.Amperes(Current.FromAmperes(watts.Watts / low.Volts));
        var value = Figures.Amperes(constant.Current);
        return new Finding("current-of-a-supply", Severity.Caution, load.Name, value,
            FormattableString.Invariant($"{load.Name} starts up like equipment with a switching supply, which draws constant power, yet has a constant {value}. If that was measured at about {nominal}, it draws {there} at {Figures.Volts(low)}: give `power: {watts.Watts:0.#} W` instead."));
    }

    private static Finding? PeakAsMean(Load load, Voltage nominal)
    {
        if (load.Peak is not { } peak || load.Duty < 1)
            return null;
        var draw = load.CurrentAt(nominal);
        return Math.Abs((draw / peak) - 1) > SameNumber ? null
            : new Finding("peak-as-mean", Severity.Caution, load.Name, Figures.Amperes(peak),
                $"{load.Name} draws its peak of {Figures.Amperes(peak)} all the time. If that is a short draw, give the mean, or a `duty`; if it is steady, leave `peak` out.");
    }
}
