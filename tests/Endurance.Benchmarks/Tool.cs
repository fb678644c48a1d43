using System.Diagnostics;

namespace Endurance.Benchmarks;

/// <summary>Programs of the machine that the comparison uses where they are installed.</summary>
internal static class Tool
{
    /// <summary>Its path by the environment's search path; <see langword="null"/>: not installed.</summary>
    public static string? Find(string name) => (Environment.GetEnvironmentVariable("PATH") ?? "")
        .Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
        .Select(folder => Path.Combine(folder, name))
        .FirstOrDefault(File.Exists);

    /// <summary>What the program writes to its standard output.</summary>
    public static string Run(string program, string folder, params ReadOnlySpan<string> arguments)
    {
        using var process = new Process { StartInfo = new ProcessStartInfo(program) { WorkingDirectory = folder, RedirectStandardOutput = true, UseShellExecute = false } };
        foreach (var argument in arguments)
            process.StartInfo.ArgumentList.Add(argument);
        process.Start();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return output;
    }
}
