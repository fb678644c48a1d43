using System.Globalization;

namespace Endurance.Quantities;

/// <summary>A span of time, or an instant counted from the zero of a timeline.</summary>
/// <remarks>Stored in seconds; <c>default</c> is zero. Factories throw <see cref="ArgumentOutOfRangeException"/> on NaN and infinities.</remarks>
public readonly record struct Duration : IComparable<Duration>
{
    private Duration(double value) => Seconds = value;

    /// <summary>Zero seconds.</summary>
    public static Duration Zero => default;

    /// <summary>Value in seconds.</summary>
    public double Seconds { get; }

    /// <summary>Value in minutes.</summary>
    public double Minutes => Seconds / 60.0;

    public static Duration FromMinutes(double minutes) => new(Finite.Checked(minutes * 60.0));

    /// <summary>Value in hours.</summary>
    public double Hours => Seconds / 3600.0;

    public static Duration FromHours(double hours) => new(Finite.Checked(hours * 3600.0));

    public static Duration FromSeconds(double seconds) => new(Finite.Checked(seconds));

    public static Duration operator +(Duration a, Duration b) => new(a.Seconds + b.Seconds);

    public static Duration operator -(Duration a, Duration b) => new(a.Seconds - b.Seconds);

    public static Duration operator -(Duration a) => new(-a.Seconds);

    public static Duration operator *(Duration a, double factor) => new(a.Seconds * factor);

    public static Duration operator *(double factor, Duration a) => new(a.Seconds * factor);

    public static Duration operator /(Duration a, double divisor) => new(a.Seconds / divisor);

    public static double operator /(Duration a, Duration b) => a.Seconds / b.Seconds;

    public static bool operator <(Duration a, Duration b) => a.Seconds < b.Seconds;

    public static bool operator >(Duration a, Duration b) => a.Seconds > b.Seconds;

    public static bool operator <=(Duration a, Duration b) => a.Seconds <= b.Seconds;

    public static bool operator >=(Duration a, Duration b) => a.Seconds >= b.Seconds;

    public int CompareTo(Duration other) => Seconds.CompareTo(other.Seconds);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Seconds:G6} s");
}
