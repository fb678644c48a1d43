using System.Collections.Immutable;
using Endurance.Components;
using Endurance.Quantities;
using Endurance.Scenarios;
using Endurance.Studies.FailureCases;

namespace Endurance.Studies.LoadAnalysis;

/// <summary>Says in words why the amp-minute form and the simulation do not give the same minutes.</summary>
internal sealed class AmpMinuteDifference(AmpMinutes form, ImmutableArray<Battery> batteries, ImmutableArray<Load> fed, Voltage nominal, BusVoltages voltages)
{
    /// <summary>A difference of capacity smaller than this is not worth a sentence.</summary>
    private const double Noticeable = 0.02;

    public ImmutableArray<string> Explain(Landing? landing, CaseResult result) =>
    [
        .. result.BreakOff is { } breakOff ? [FormattableString.Invariant($"The simulation breaks off at {breakOff.Time.Minutes:0.#} min: {breakOff.Words}.")] : Array.Empty<string>(),
        .. form.Cruise is null ? ["By the form, recognition and landing together take more than the batteries hold."] : Array.Empty<string>(),
        .. batteries.SelectMany(Rate),
        .. batteries.Length > 1 ? [$"The form adds {batteries.Length} batteries up; in the network each gives what its feeds and diodes let it give."] : Array.Empty<string>(),
        .. Falling(),
        .. Ends(landing, result),
        .. result.Run.Recognition is null ? ["Nobody acts in this case, so the form has no time before shedding."] : Array.Empty<string>(),
    ];

    private IEnumerable<string> Rate(Battery battery)
    {
        var own = battery.EffectiveCapacity * battery.InitialCharge;
        if (own <= Charge.Zero)
            return [$"{battery.Name} is empty at the start."];
        var (current, lasting) = Currents()
            .Select(drawn => drawn * (own / form.Usable))
            .Select(drawn => (drawn, drawn * battery.LifetimeAt(drawn) * battery.InitialCharge))
            .MaxBy(answer => Math.Abs((answer.Item2 / own) - 1));
        if (Math.Abs((lasting / own) - 1) < Noticeable)
            return [];
        var how = lasting < own ? "less" : "more";
        return [$"The form takes {AmpereHours(own)} out of {battery.Name} at any current. Its {AmpereHours(battery.RatedCapacity)} are rated over {Number(battery.Rate.Hours)} h, at {Amperes(battery.ReferenceCurrent)}; at {Amperes(current)} it gives {how}: {AmpereHours(lasting)}."];
    }

    /// <summary>Those of the form that are drawn for some time.</summary>
    private IEnumerable<Current> Currents()
    {
        yield return form.Shed;
        if (form.TimeBefore > Duration.Zero)
            yield return form.Before;
        if (form.TimeLanding > Duration.Zero)
            yield return form.Landing;
    }

    private IEnumerable<string> Falling()
    {
        var watts = fed.Where(load => load.Demand is ConstantPower && !voltages.IsBehindConverter(load.Bus)).Select(load => load.Name).ToList();
        if (watts.Count > 0)
            yield return FormattableString.Invariant($"The form takes all amperes at {nominal.Volts:0} V. On a battery the bus is lower, and constant power draws more: {string.Join(", ", watts)}.");
        var converted = fed.Where(load => voltages.IsBehindConverter(load.Bus)).Select(load => load.Name).ToList();
        if (converted.Count > 0)
            yield return FormattableString.Invariant($"A converter takes constant power, so what it supplies draws more than at {nominal.Volts:0} V as the bus before it falls: {string.Join(", ", converted)}.");
        var ohms = fed.Where(load => load.Demand is ConstantResistance && !voltages.IsBehindConverter(load.Bus)).Select(load => load.Name).ToList();
        if (ohms.Count > 0)
            yield return FormattableString.Invariant($"Resistive loads draw less on a battery than at {nominal.Volts:0} V: {string.Join(", ", ohms)}.");
    }

    private static IEnumerable<string> Ends(Landing? landing, CaseResult result)
    {
        if (result.BreakOff is null && result.LimitedBy is { } first)
            yield return $"The form runs the batteries to nothing; the simulation counts until {first} is lost.";
        yield return landing is null
            ? "No landing is given, so neither holds anything back for it."
            : $"Simulated minutes are the latest begin of the approach and the {Number(landing.Lasts.Minutes)} min to the ground.";
    }

    private static string AmpereHours(Charge charge) => Number(charge.AmpereHours) + " Ah";

    private static string Amperes(Current current) => Number(current.Amperes) + " A";

    private static string Number(double value) => value.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture);
}
