using System.Globalization;

namespace Endurance.Benchmarks.Spice;

/// <summary>How ngspice is asked to run.</summary>
/// <param name="Method">Of integration, trap or gear.</param>
/// <param name="RelativeTolerance">Of its Newton iterations and truncation.</param>
/// <param name="LongestStep">Seconds.</param>
internal sealed record SpiceSetting(string Method, double RelativeTolerance, double LongestStep)
{
    /// <summary>The grid from which the fastest at each exactness are shown.</summary>
    public static IEnumerable<SpiceSetting> All =>
        from method in new[] { "trap", "gear" }
        from tolerance in new[] { 1e-2, 1e-3, 1e-5 }
        from step in new[] { 400.0, 200, 100, 50, 20, 10 }
        select new SpiceSetting(method, tolerance, step);

    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Method}, reltol {RelativeTolerance:0e+0}, tmax {LongestStep:F0} s");
}
