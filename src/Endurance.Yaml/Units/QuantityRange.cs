using System.Globalization;

namespace Endurance.Yaml.Units;

/// <summary>A quantity a key takes: its kind, its limits, and an example of it.</summary>
/// <param name="Dimension">Kind and units.</param>
/// <param name="Unit">Unit of the limits.</param>
/// <param name="Least">Lower limit.</param>
/// <param name="IsLeastAllowed">Whether the lower limit itself is in range.</param>
/// <param name="Most">Upper limit, in range.</param>
/// <param name="Example">As a file would write it; in range.</param>
internal sealed record QuantityRange(Dimension Dimension, string Unit, double Least, bool IsLeastAllowed, double Most, string Example)
{
    // A limit itself must pass after its unit conversion has rounded.
    private const double Slack = 1e-12;

    /// <summary>The smallest value over the largest where a range begins above zero: under a tenth of a microohm, a nanoampere or a microsecond, and still a number to divide by.</summary>
    private const double SmallestShare = 1e-13;

    public static QuantityRange Above(Dimension dimension, string unit, double least, double most, string example) => new(dimension, unit, least, false, most, example);

    public static QuantityRange From(Dimension dimension, string unit, double least, double most, string example) => new(dimension, unit, least, true, most, example);

    /// <summary>The example in SI, which stands in for a value that could not be read.</summary>
    public double Placeholder => QuantityReader.Read(Example, this).Value ?? throw new InvalidOperationException($"The example {Example} is not a legal quantity.");

    /// <summary>The limits in words.</summary>
    public string InWords => $"{(IsLeastAllowed ? "at least" : "above")} {InUnit(Least)} and at most {InUnit(Most)}";

    public bool IsAboveMost(double si) => si > Si(Most) + (Slack * Math.Abs(Si(Most)));

    public bool Contains(double si)
    {
        var least = Si(Least);
        var isEnough = IsLeastAllowed ? si >= least - (Slack * Math.Abs(least)) : si > least && si >= SmallestShare * Si(Most);
        return isEnough && !IsAboveMost(si);
    }

    private double Si(double limit) => Dimension.Find(Unit)?.ToSi(limit) ?? limit;

    private string InUnit(double limit) => string.Create(CultureInfo.InvariantCulture, $"{limit} {Unit}").TrimEnd();
}
