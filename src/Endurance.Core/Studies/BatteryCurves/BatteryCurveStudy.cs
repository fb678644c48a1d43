using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Library;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Simulation;

namespace Endurance.Studies.BatteryCurves;

/// <summary>How long a battery lasts at constant currents: at its temperature and health, new and warm, by both capacity models.</summary>
public static class BatteryCurveStudy
{
    private const int FinePoints = 60;
    private const string Terminal = "terminal";

    /// <summary>Ratio of two currents that are the same for a reader.</summary>
    private const double Same = 1.0001;

    /// <summary>The curve of a full battery.</summary>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static BatteryCurve Run(Scenario scenario, Battery battery, BatteryCurveOptions options, CancellationToken cancellation = default)
    {
        var asked = options.Currents.IsEmpty ? Ladder(battery) : options.Currents;
        ImmutableArray<Current> currents = [.. asked.Distinct().Order()];
        BatteryCurveRow RowAt(Current current)
        {
            cancellation.ThrowIfCancellationRequested();
            return Row(scenario, battery, current, options.EndVoltage);
        }

        return new BatteryCurve
        {
            Battery = battery,
            EndVoltage = options.EndVoltage,
            Rows = [.. currents.Select(RowAt)],
            Fine = [.. FineCurrents(battery, currents).Select(RowAt)],
            RatingChecks = Checks(scenario, battery),
        };
    }

    /// <summary>1, 2, 5 times powers of ten from half the 20-hour current to twice the rated capacity in an hour, and every stated current.</summary>
    private static ImmutableArray<Current> Ladder(Battery battery)
    {
        var low = battery.LowestPeukertCurrent.Amperes / 2;
        var high = Math.Max(2 * battery.RatedCapacity.AmpereHours, 4 * low);
        var round = from power in Enumerable.Range((int)Math.Floor(Math.Log10(low)), 20)
                    from factor in (double[])[1, 2, 5]
                    let amperes = factor * Math.Pow(10, power)
                    where amperes >= low && amperes <= high
                    select Current.FromAmperes(amperes);
        var stated = battery.Ratings.Select(rating => rating.Current).ToImmutableArray();
        return [.. stated, .. round.Where(current => !stated.Any(other => AreSame(current, other)))];
    }

    private static IEnumerable<Current> FineCurrents(Battery battery, ImmutableArray<Current> currents)
    {
        const double margin = 1.2;
        var all = currents.Concat(battery.Ratings.Select(rating => rating.Current)).Select(current => current.Amperes).ToArray();
        var (low, high) = (all.Min() / margin, all.Max() * margin);
        return Enumerable.Range(0, FinePoints).Select(i => Current.FromAmperes(low * Math.Pow(high / low, i / (FinePoints - 1.0))));
    }

    private static BatteryCurveRow Row(Scenario scenario, Battery battery, Current current, Voltage? end)
    {
        var peukert = battery with { CapacityModel = CapacityModel.Peukert, InitialCharge = 1 };
        var kinetic = battery.KineticWells is { } wells ? battery with { CapacityModel = CapacityModel.Kinetic, TypedWells = wells, InitialCharge = 1 } : null;
        return new BatteryCurveRow
        {
            Current = current,
            Lasts = Lasts(scenario, peukert, current, end),
            LastsKinetic = kinetic is null ? null : Lasts(scenario, kinetic, current, end),
            LastsNew = Lasts(scenario, peukert.NewAndWarm, current, end),
            Given = battery.Ratings.FirstOrDefault(rating => AreSame(rating.Current, current))?.Lasts,
        };
    }

    /// <summary>To exhaustion by the lifetime law itself; to a voltage by simulating the battery alone with this load.</summary>
    private static Duration Lasts(Scenario scenario, Battery battery, Current current, Voltage? end)
    {
        var exhaustion = battery.CapacityModel == CapacityModel.Kinetic ? battery.KineticLifetimeAt(current)!.Value : battery.LifetimeAt(current);
        if (end is not { } volts)
            return exhaustion;
        const double spare = 1.01;
        var bench = new Scenario
        {
            Title = battery.Name,
            System = scenario.System,
            Ambient = scenario.Ambient,
            Horizon = (exhaustion * spare) + Duration.FromMinutes(1),
            Buses = [new Bus { Name = Terminal, Cutoff = volts }],
            Batteries = [Settled(battery, exhaustion) with { Bus = Terminal }],
            Loads = [new Load { Name = "load", Bus = Terminal, Demand = new ConstantCurrent(current), IsEssential = true }],
        };
        var run = new Simulator(bench).Run(new FailureCase { Name = battery.Name, Timeline = [] }, new SimulationOptions());
        return run.Buses[0].TimeToCutoff ?? exhaustion;
    }

    /// <summary>Pairs that have settled for nearly all of the discharge are no more than resistance, and need no short steps.</summary>
    private static Battery Settled(Battery battery, Duration lifetime)
    {
        const double shortest = 1e-3;
        var fast = battery.Polarisation.Where(pair => pair.Time < lifetime * shortest).ToImmutableArray();
        return battery with
        {
            Resistance = battery.Resistance.Raised(fast.Sum(pair => pair.Resistance.Ohms)),
            Polarisation = [.. battery.Polarisation.Except(fast)],
        };
    }

    /// <summary>End voltage where none was stated: of the chemistry, else 1.75 V a lead-acid cell, the usual end of a 20-hour rating (US Army OS 010, armyordnance.tpub.com).</summary>
    private static ImmutableArray<RatingCheck> Checks(Scenario scenario, Battery battery)
    {
        if (battery.Lifetimes is not null)
            return [];
        var values = ChemistryTable.For(battery.Chemistry ?? Chemistry.Flooded);
        var usual = Voltage.FromVolts(values.EndVoltsPerCell.Value * (OfChemistry(battery) ?? (values.Cells.Value * scenario.BatteriesInSeries)));
        var fresh = battery.NewAndWarm;
        var ohms = fresh.Resistance.Raised(battery.Polarisation.Sum(pair => pair.Resistance.Ohms));
        return
        [
            .. from rating in battery.Ratings
               let end = rating.EndVoltage ?? usual
               select new RatingCheck(rating, end, rating.EndVoltage is not null, LifetimeCurve.ChargeAtEnd(rating.Current, end, fresh.Emf, ohms)),
        ];
    }

    private static int? OfChemistry(Battery battery) => battery.Chemistry is null ? null : battery.Cells;

    private static bool AreSame(Current a, Current b) => a / b is < Same and > 1 / Same;
}
