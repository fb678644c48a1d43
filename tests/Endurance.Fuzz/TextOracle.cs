using Endurance.Findings;
using Endurance.Simulation;
using Endurance.Yaml;

namespace Endurance.Fuzz;

/// <summary>What must hold for every text given to the reader.</summary>
internal sealed class TextOracle(IReadOnlyList<string> shipped)
{
    private const string Name = "damaged.yaml";

    /// <summary>Faults of a file as a whole, which have no place inside it.</summary>
    private static readonly string[] Placeless = ["empty-file", "file-too-large"];

    /// <exception cref="FuzzException">Something does not hold.</exception>
    public Verdict Check(int seed)
    {
        var text = DamagedText.Of(seed, shipped);
        var read = ScenarioReader.ReadText(Name, text);
        CheckDiagnostics(read);
        foreach (var layout in read.Layouts.Take(2))
            CheckDiagnostics(ScenarioReader.ReadText(Name, text, layout));
        if (read.Scenario is not { } scenario)
            return Verdict.Refused;
        try
        {
            foreach (var failureCase in scenario.FailureCases.Take(2))
            {
                if (NetworkOracle.Run(scenario, failureCase, new SimulationOptions { Tolerance = 1e-6 }) is null)
                    return Verdict.Chattered;
            }
        }
        catch (UnsolvedNetworkException)
        {
            return Verdict.Unsolved; // the numbers of these texts know no bounds but those of the keys
        }

        return Verdict.Held;
    }

    private static void CheckDiagnostics(ScenarioReadResult read)
    {
        if (read.Scenario is null != read.Diagnostics.Any(told => told.Severity == Severity.Error))
            throw new FuzzException("a scenario and an error, or neither");
        foreach (var told in read.Diagnostics)
        {
            if (!string.Equals(told.File, Name, StringComparison.Ordinal) || told.Message.Length == 0 || told.Length < 1)
                throw new FuzzException($"{told.Code}: file {told.File}, length {told.Length}");
            if ((told.Line < 1 || told.Column < 1) && !Placeless.Contains(told.Code, StringComparer.Ordinal))
                throw new FuzzException($"{told.Code}: line {told.Line}, column {told.Column}: {told.Message}");
            if (told.Column > told.SourceLine.Length + 1 && told.Code is not "too-many-diagnostics")
                throw new FuzzException($"{told.Code}: column {told.Column} of a line of {told.SourceLine.Length}");
        }

        DiagnosticRenderer.Render(read.Diagnostics);
    }
}
