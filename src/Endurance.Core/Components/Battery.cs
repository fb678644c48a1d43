using System.Collections.Immutable;
using Endurance.Numerics;
using Endurance.Quantities;

namespace Endurance.Components;

/// <summary>A battery between a bus and ground: EMF behind a resistance, and a lifetime that follows Peukert's law.</summary>
/// <remarks>Current is positive when discharging. Charge is a fraction of life, 0 exhausted to 1 full.</remarks>
public sealed record Battery
{
    public required string Name { get; init; }

    public required string Bus { get; init; }

    /// <summary>Rated capacity when new and warm, at the rate of <see cref="Rate"/>; above zero.</summary>
    public required Charge RatedCapacity { get; init; }

    /// <summary>Time in which the rated current, <see cref="RatedCapacity"/> divided by this, empties a new, warm battery; above zero.</summary>
    public required Duration Rate { get; init; }

    /// <summary>Peukert's exponent; at least 1.</summary>
    public required double PeukertExponent { get; init; }

    /// <summary>Volts over charge, not falling, from charge 0 to charge 1.</summary>
    public required PiecewiseLinear Emf { get; init; }

    /// <summary>Ohms over charge at the battery's temperature before <see cref="ResistanceFactor"/>; every value above zero.</summary>
    public required PiecewiseLinear Resistance { get; init; }

    /// <summary>The same of a battery of full health; <see langword="null"/>: health does not change <see cref="Resistance"/>.</summary>
    public PiecewiseLinear? ResistanceWhenNew { get; init; }

    /// <summary>Charge stored per charge received; above 0, at most 1.</summary>
    public double ChargeEfficiency { get; init; } = 1;

    /// <summary>State of charge at time zero; 0 to 1.</summary>
    public double InitialCharge { get; init; } = 1;

    /// <summary>Capacity left by age as a fraction of the rating; above 0, at most 1.5.</summary>
    public double Health { get; init; } = 1;

    public required Temperature Temperature { get; init; }

    /// <summary>Where <see cref="CapacityFactor"/> comes from, over degrees Celsius; <see langword="null"/>: temperature does not change it.</summary>
    public PiecewiseLinear? CapacityOverTemperature { get; init; }

    /// <summary>Where <see cref="ResistanceFactor"/> comes from, over degrees Celsius; <see langword="null"/>: temperature does not change it.</summary>
    public PiecewiseLinear? ResistanceOverTemperature { get; init; }

    /// <summary>Capacity at <see cref="Temperature"/> as a fraction of that at 25 degC; above 0.</summary>
    public double CapacityFactor { get; init; } = 1;

    /// <summary>Multiplies <see cref="Resistance"/>; above 0.</summary>
    public double ResistanceFactor { get; init; } = 1;

    /// <summary>Limit of the charge current: this many times the effective capacity times the charge missing, per hour. <see langword="null"/>: no limit.</summary>
    public double? ChargeAcceptancePerHour { get; init; }

    /// <summary>Supplies library values; <see langword="null"/>: everything was given.</summary>
    public Chemistry? Chemistry { get; init; }

    /// <summary>Cells in series, at least 1; <see langword="null"/>: not known, so none can be shorted.</summary>
    public int? Cells { get; init; }

    /// <summary>Lifetime over current from a data sheet, new and warm; <see langword="null"/>: Peukert's law.</summary>
    /// <remarks>With it, <see cref="RatedCapacity"/> and <see cref="Rate"/> are those of its lowest current and <see cref="PeukertExponent"/> has no effect.</remarks>
    public LifetimeCurve? Lifetimes { get; init; }

    /// <summary>Currents that the exponent was taken from, low and high; <see langword="null"/>: typed or from the library.</summary>
    public (Current Lowest, Current Highest)? ExponentRange { get; init; }

    /// <summary>What was stated about its lifetime, in the order stated; the law above was made from it.</summary>
    public ImmutableArray<Rating> Ratings { get; init; } = [];

    public CapacityModel CapacityModel { get; init; }

    /// <summary>Typed wells of the kinetic model; <see langword="null"/>: see <see cref="KineticWells"/>.</summary>
    public KineticWells? TypedWells { get; init; }

    public ImmutableArray<PolarisationPair> Polarisation { get; init; } = [];

    public BatteryProtection? Protection { get; init; }

    /// <summary>Wells of the kinetic model: the typed ones, or those that pass through the lifetimes at the 20-, 5- and 1-hour currents; <see langword="null"/> when there are none.</summary>
    public KineticWells? KineticWells => TypedWells ?? Components.KineticWells.Through(Point(20), Point(5), Point(1));

    /// <summary>The current that empties the battery in <see cref="Rate"/>.</summary>
    public Current ReferenceCurrent => Current.FromAmperes(RatedCapacity.AmpereHours / Rate.Hours);

    /// <summary>The 20-hour current, below which a slower discharge gives no more capacity.</summary>
    /// <remarks>I_ref min(1, (H/20)^(1/k)).</remarks>
    public Current LowestPeukertCurrent => Lifetimes is { } curve ? curve.Lowest :
        ReferenceCurrent * Math.Min(1, Math.Pow(Rate.Hours / 20, 1 / PeukertExponent));

    /// <summary>The same battery fresh from the maker: full, of full health, at 25 degC.</summary>
    public Battery NewAndWarm => WithHealth(1) with
    {
        CapacityFactor = 1,
        ResistanceFactor = 1,
        InitialCharge = 1,
        Temperature = Temperature.FromCelsius(25),
    };

    /// <summary>The same battery at another age: the capacity follows, and so does a resistance that was not measured.</summary>
    public Battery WithHealth(double health) => this with { Health = health, Resistance = ResistanceWhenNew?.Scaled(1 / health) ?? Resistance };

    /// <summary>The same battery at another temperature: capacity and resistance follow where the chemistry says how.</summary>
    public Battery WithTemperature(Temperature temperature) => this with
    {
        Temperature = temperature,
        CapacityFactor = CapacityOverTemperature?.At(temperature.Celsius) ?? CapacityFactor,
        ResistanceFactor = ResistanceOverTemperature?.At(temperature.Celsius) ?? ResistanceFactor,
    };

    /// <summary>Rated capacity times health times the capacity factor.</summary>
    public Charge EffectiveCapacity => RatedCapacity * (Health * CapacityFactor);

    /// <summary>Time to exhaustion from full at a constant current, by Peukert's law in the form of a rated point.</summary>
    /// <remarks>H (C_eff/C_rated) (I_ref/I)^k at and above <see cref="LowestPeukertCurrent"/>; below it the capacity stays that at the 20-hour current.</remarks>
    public Duration LifetimeAt(Current drain)
    {
        if (drain <= Current.Zero)
            throw new ArgumentOutOfRangeException(nameof(drain), drain, "A lifetime needs a discharge current above zero.");
        if (Lifetimes is { } curve)
            return curve.At(drain) * (Health * CapacityFactor);
        var stretched = Math.Max(drain.Amperes, LowestPeukertCurrent.Amperes);
        var rate = drain.Amperes / EffectiveCapacity.AmpereHours * Math.Pow(stretched / ReferenceCurrent.Amperes, PeukertExponent - 1);
        return Duration.FromHours(1 / rate);
    }

    /// <summary>Time to an empty available well at a constant current, from full, by the kinetic model; <see langword="null"/> without wells.</summary>
    public Duration? KineticLifetimeAt(Current drain) => KineticWells?.LifetimeAt(drain / (Health * CapacityFactor));

    /// <summary>The constant current that empties a new, warm battery in a time of at most 20 hours or the longest of the data sheet.</summary>
    public Current NewCurrentFor(Duration lifetime)
    {
        if (Lifetimes is null)
            return ReferenceCurrent * Math.Pow(Rate / lifetime, 1 / PeukertExponent);
        var curve = Lifetimes;
        double Excess(double logAmperes) => Math.Log(curve.At(Current.FromAmperes(Math.Exp(logAmperes))) / lifetime);
        var middle = Math.Log(curve.Lowest.Amperes);
        const double span = 40, accuracy = 1e-13;
        return Current.FromAmperes(Math.Exp(MathNet.Numerics.RootFinding.Brent.FindRoot(Excess, middle - span, middle + span, accuracy, 300)));
    }

    private (Duration Time, Charge Delivered) Point(double hours)
    {
        var time = Duration.FromHours(hours);
        return (time, NewCurrentFor(time) * time);
    }
}
