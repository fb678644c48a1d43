using System.Collections.Immutable;
using Endurance.Findings;
using Endurance.Studies.BatteryFit;
using Endurance.Yaml;

namespace Endurance.Cli.Logs;

/// <summary>A log as read.</summary>
/// <param name="Samples">By strictly rising time from zero; empty when there are errors.</param>
/// <param name="Diagnostics">Everything wrong with the file, in order of line and column.</param>
/// <param name="Notes">What the reading did to put the rows in order.</param>
internal sealed record LogReading(ImmutableArray<LogSample> Samples, ImmutableArray<Diagnostic> Diagnostics, ImmutableArray<Finding> Notes);
