using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Findings;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.GroundTest;

namespace Endurance.Studies.Reconciliation;

/// <summary>Turns the current of a load, measured alone, into its draw.</summary>
internal static class LoadMeasurement
{
    /// <summary>Of A, W and ohm; as many as are written into a file.</summary>
    private const int Decimals = 5;

    /// <summary>Volts; less runs nothing.</summary>
    private const double LeastVolts = 1;

    /// <summary>The loads that could be taken over, and those that lack the volts for it. Where the volts are out and too low for the load, they speak for themselves.</summary>
    public static (ImmutableArray<MeasuredLoad> Loads, ImmutableArray<Finding> LeftOut) Of(Scenario scenario, ImmutableArray<ComparedReading> readings)
    {
        var loads = ImmutableArray.CreateBuilder<MeasuredLoad>();
        var leftOut = ImmutableArray.CreateBuilder<Finding>();
        foreach (var load in scenario.Loads)
        {
            var alone = readings.Where(reading => reading.Point.Group == TestGroup.LoadAlone && Is(reading.Point.Parts[0], load.Name)).ToList();
            if (alone.Find(reading => reading.Expected.Kind == ReadingKind.LoadAmperes) is not { Measured: not null, Expected.Predicted: > 0 } amperes || IsNothing(amperes))
                continue;
            var volts = alone.Find(reading => reading.Expected.Kind == ReadingKind.BusVolts);
            if (Demand(load, amperes, volts) is { } demand)
                loads.Add(Taken(load, demand, amperes));
            else if (volts?.Measured is null)
                leftOut.Add(WithoutVolts(load, amperes));
        }

        return (loads.ToImmutable(), leftOut.ToImmutable());
    }

    /// <summary>Too little for a meter to tell from a load that is off, where the scenario has it draw.</summary>
    public static bool IsNothing(ComparedReading amperes) =>
        amperes.Measured <= 0 || (amperes.Measured < Tolerances.LeastCurrent && amperes.Verdict == ReadingVerdict.OutOfTolerance);

    private static MeasuredLoad Taken(Load load, Demand demand, ComparedReading amperes) => new(
        load,
        load with { Demand = demand, Basis = LoadBasis.Measured, MeasuredOn = amperes.Date },
        amperes.Measured!.Value,
        amperes.Expected.Predicted,
        amperes.Point.Number);

    /// <returns><see langword="null"/> where volts are needed and not there.</returns>
    private static Demand? Demand(Load load, ComparedReading amperes, ComparedReading? volts)
    {
        var current = amperes.Measured!.Value;
        if (load.Demand is ConstantCurrent)
            return amperes.IsAsPrinted ? load.Demand : new ConstantCurrent(Current.FromAmperes(Rounded(current)));
        if (volts?.Measured is not { } bus)
            return null;
        if (amperes.IsAsPrinted && volts.IsAsPrinted)
            return load.Demand;
        var terminals = bus - Drop(load, amperes, volts, current);
        if (terminals < Math.Max(LeastVolts, load.Minimum?.Volts ?? 0))
            return null;
        return load.Demand is ConstantPower
            ? new ConstantPower(Power.FromWatts(Rounded(terminals * current)))
            : new ConstantResistance(Resistance.FromOhms(Rounded(terminals / current)));
    }

    /// <summary>Volts between the bus and the load's terminals: its conductors in proportion to the current, a diode in its box as predicted.</summary>
    private static double Drop(Load load, ComparedReading amperes, ComparedReading volts, double current)
    {
        var predicted = amperes.Expected.Predicted;
        var terminals = load.Demand switch
        {
            ConstantPower power => power.Power.Watts / predicted,
            ConstantResistance resistance => resistance.Resistance.Ohms * predicted,
            _ => volts.Expected.Predicted,
        };
        var ohmic = load.BranchResistance.Ohms;
        return (ohmic * current) + Math.Max(0, volts.Expected.Predicted - terminals - (ohmic * predicted));
    }

    private static Finding WithoutVolts(Load load, ComparedReading amperes) => new(
        "load-without-volts",
        Severity.Caution,
        load.Name,
        FormattableString.Invariant($"{amperes.Measured:0.##} A"),
        FormattableString.Invariant($"Its current was measured at T{amperes.Point.Number} and not the volts there; a draw in watts or ohms cannot be had without them, so it stays as the scenario has it. Measure {load.Bus} at that point too."));

    private static double Rounded(double value) => Math.Max(Math.Round(value, Decimals), Math.Pow(10, -Decimals));

    private static bool Is(string a, string b) => string.Equals(a, b, StringComparison.Ordinal);
}
