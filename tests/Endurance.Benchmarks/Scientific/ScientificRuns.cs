using System.Globalization;

namespace Endurance.Benchmarks.Scientific;

/// <summary>Runs SciPy's integrators on the reference networks, where the system's Python has them.</summary>
internal static class ScientificRuns
{
    private const string Script = "networks.py";
    private static readonly string[] Interpreters = ["/usr/bin/python3", "python3"];

    /// <summary>Empty where there is no Python with SciPy.</summary>
    public static List<Measurement> Of(BenchmarkNetwork network)
    {
        var folder = Path.Combine(AppContext.BaseDirectory, "Scientific");
        foreach (var name in Interpreters)
        {
            if (Tool.Find(name) is not { } program || !Tool.Run(program, folder, "-c", "import scipy.integrate; print(1)").StartsWith('1'))
                continue;
            var lines = Tool.Run(program, folder, Script, network.IsTwoBatteries ? "two-batteries" : "main-and-essential").Split('\n');
            return [.. lines.Select(line => line.Split(' ')).Where(words => words.Length == 4).Select(words => new Measurement(
                "SciPy", $"{words[0]}, rtol {words[1]}", double.Parse(words[2], CultureInfo.InvariantCulture), double.Parse(words[3], CultureInfo.InvariantCulture)))];
        }

        return [];
    }
}
