using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Studies.GroundTest;
using static System.FormattableString;

namespace Endurance.Studies.Reconciliation;

/// <summary>Warnings that come on, and sources that hold the volts, elsewhere than the scenario says.</summary>
/// <remarks>No fault is put into the aircraft for them: their points say of themselves which part is off.</remarks>
internal static class LevelFindings
{
    public static IEnumerable<Finding> Of(ImmutableArray<ComparedReading> readings) => readings
        .Where(reading => reading.Verdict == ReadingVerdict.OutOfTolerance)
        .Select(reading => reading.Point.Group switch
        {
            TestGroup.Warning => Warning(reading),
            TestGroup.EngineRunning => Source(reading),
            _ => null,
        })
        .OfType<Finding>();

    private static Finding Warning(ComparedReading reading) => new(
        "warning-level-off",
        Severity.Warning,
        reading.Point.Parts[0],
        Deviation(reading),
        Invariant($"At T{reading.Point.Number} it came on at {reading.Measured:0.00} V and not at {reading.Expected.Predicted:0.00} V, so it is recognised {(reading.Deviation < 0 ? "later" : "sooner")} than the minutes here have it. Set its level, or type {reading.Measured:0.##} V as its `below`, and run the cases again."));

    private static Finding Source(ComparedReading reading) => new(
        "source-volts-off",
        Severity.Warning,
        reading.Point.Parts[0],
        Deviation(reading),
        Invariant($"At T{reading.Point.Number} {reading.Expected.Part} had {reading.Measured:0.00} V and not {reading.Expected.Predicted:0.00} V. Read it again once the batteries take no more charge; if it stays so, look at the source, its regulator and its wires, or type the volts that it holds."));

    private static string Deviation(ComparedReading reading) => Invariant($"{reading.Deviation:+0.00;-0.00} V");
}
